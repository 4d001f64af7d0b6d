package beltmark.signoff;

import beltmark.core.finish.FinishFinding;
import beltmark.core.finish.FinishReading;
import beltmark.core.setup.AsLeftCheck;
import beltmark.core.setup.MeasureCheck;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.Quantity;
import beltmark.signoff.MeasureRow.Figures;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says as-left measures. */
final class SignoffWords {

    private static final String PLUS = "+";

    private final View view;

    SignoffWords(View view) {
        this.view = view;
    }

    String rig(Rig rig) {
        return view.text(
                "signoff.rig",
                "card",
                view.text("hardware.name." + rig.card().id()),
                "tip",
                view.quantity(rig.tip().word()));
    }

    /** Finer than the person's own tape: what was measured may lie between its graduations, and must not look rounded. */
    String exact(Length length) {
        boolean inches = view.words().graduation().unit() == LengthUnit.INCH;
        return LengthPrinter.print(length, inches ? Graduation.SIXTY_FOURTH_INCH : Graduation.MILLIMETRE);
    }

    /** {@return everything that was measured, in the order of the job} */
    List<MeasureRow> rows(Findings findings, Map<String, String> explanations) {
        List<MeasureRow> rows = new ArrayList<>();
        findings.measures().measures().forEach(check -> rows.add(row(check, explanations.get(check.id()))));
        rows.add(springs(findings.measures(), explanations.get(Findings.SPRINGS)));
        findings.finish()
                .findings()
                .forEach(finding ->
                        rows.add(row(finding, explanations.get(finding.reading().id()))));
        return rows;
    }

    private MeasureRow row(MeasureCheck check, @Nullable String explanation) {
        return new MeasureRow(
                check.id(),
                title(check.id()),
                new Figures(
                        exact(check.wanted()),
                        exact(check.measured()),
                        signed(check.offBy()),
                        plusMinus(exact(check.tolerance()))),
                check.isWithin(),
                check.isWithin() ? view.text("signoff.within") : beyond(check),
                slip(check),
                explanation);
    }

    private MeasureRow springs(AsLeftCheck check, @Nullable String explanation) {
        Length difference = check.springDifference();
        String key = difference.equals(Length.ZERO)
                ? "signoff.springs.same"
                : check.areSpringsEqual() ? "signoff.springs.near" : "signoff.springs.apart";
        return new MeasureRow(
                Findings.SPRINGS,
                title(Findings.SPRINGS),
                new Figures("", "", "", ""),
                check.areSpringsEqual(),
                view.text(key, "difference", exact(difference.abs()), "allowed", exact(check.springTolerance())),
                null,
                explanation);
    }

    private MeasureRow row(FinishFinding finding, @Nullable String explanation) {
        String id = finding.reading().id();
        return new MeasureRow(id, title(id), figures(finding), finding.isWithin(), verdict(finding), null, explanation);
    }

    private Figures figures(FinishFinding finding) {
        Quantity tolerance = finding.tolerance();
        return switch (finding.reading()) {
            case BOUNCE -> new Figures("", "", "", "");
            case SPLICE ->
                new Figures(
                        view.text("signoff.splice-wanted", "sleeve", told(finding.wanted())),
                        told(finding.measured()),
                        "",
                        "");
            case CENTRING, BLADE_ANGLE ->
                new Figures(
                        told(finding.wanted()),
                        told(finding.measured()),
                        "",
                        tolerance == null ? "" : plusMinus(told(tolerance)));
        };
    }

    /** What came of the bounce test is itself the verdict. */
    private String verdict(FinishFinding finding) {
        if (finding.reading() == FinishReading.BOUNCE) {
            return told(finding.measured());
        }
        return view.text(
                finding.isWithin()
                        ? "signoff.within"
                        : "signoff.beyond." + finding.reading().id());
    }

    private String told(Quantity quantity) {
        return quantity instanceof Length length ? exact(length) : view.quantity(quantity);
    }

    private static String plusMinus(String allowed) {
        return "± " + allowed;
    }

    /** {@return what something that may be beyond its tolerance is called} */
    String title(String name) {
        if (name.equals(Findings.SPRINGS)) {
            return view.text("signoff.springs.title");
        }
        if (name.equals(FinishReading.CENTRING.id())) {
            return view.text("signoff.reading.centring.off");
        }
        String measure = name.replaceFirst("-(left|right)$", ".$1");
        return measure.equals(name)
                ? view.text("signoff.reading." + name + ".title")
                : view.text("signoff.measure." + measure);
    }

    private String signed(Length off) {
        return (off.compareTo(Length.ZERO) > 0 ? PLUS : "") + exact(off);
    }

    private String beyond(MeasureCheck check) {
        String way = check.offBy().isNegative() ? "under" : "over";
        return view.text(
                "signoff.beyond." + check.measure().id() + "." + way,
                "off",
                exact(check.offBy().abs()),
                "allowed",
                exact(check.tolerance()));
    }

    private @Nullable String slip(MeasureCheck check) {
        return check.findSlip().map(slip -> view.text("signoff.slip." + slip)).orElse(null);
    }
}
