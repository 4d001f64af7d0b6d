package beltmark.signoff;

import beltmark.core.setup.Measure;
import beltmark.core.setup.MeasureCheck;
import beltmark.core.setup.Side;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import beltmark.web.View;
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

    MeasureRow row(MeasureCheck check) {
        return new MeasureRow(
                title(check.measure(), check.side()),
                exact(check.wanted()),
                exact(check.measured()),
                signed(check.offBy()),
                exact(check.tolerance()),
                check.isWithin(),
                check.isWithin() ? view.text("signoff.within") : beyond(check),
                slip(check));
    }

    String title(Measure measure, Side side) {
        return view.text("signoff.measure." + measure.id() + "." + side.id());
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
