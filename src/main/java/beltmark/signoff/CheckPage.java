package beltmark.signoff;

import beltmark.core.setup.AsLeftCheck;
import beltmark.core.units.Length;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The as-left measures, checked; and what is signed, when all are within.
 *
 * @param view what all pages share
 * @param fitter who showed the set-up
 * @param shown what was read from the form
 * @param form what was typed
 * @param entry the form again, to change something
 * @param meaning what the signature says
 * @param refusal why it was not signed, or null
 */
public record CheckPage(
        View view,
        Fitter fitter,
        Demonstration shown,
        DemonstrationForm form,
        EntryForm entry,
        String meaning,
        @Nullable Refusal refusal)
        implements Page {

    /** {@return whether it can be signed} */
    public boolean canSign() {
        return check().isWithin();
    }

    private AsLeftCheck check() {
        return shown.check();
    }

    /** {@return the measures in words} */
    public List<MeasureRow> rows() {
        return check().measures().stream().map(new SignoffWords(view)::row).toList();
    }

    /** {@return how many measures are off by more than is allowed} */
    public long beyond() {
        return check().measures().stream().filter(one -> !one.isWithin()).count() + (areSpringsEqual() ? 0 : 1);
    }

    /** {@return whether both springs are set the same} */
    public boolean areSpringsEqual() {
        return check().areSpringsEqual();
    }

    /** {@return in one sentence how the two springs compare} */
    public String springs() {
        Length difference = check().springDifference();
        String key = difference.equals(Length.ZERO)
                ? "signoff.springs.same"
                : areSpringsEqual() ? "signoff.springs.near" : "signoff.springs.apart";
        SignoffWords words = new SignoffWords(view);
        return view.text(
                key, "difference", words.exact(difference.abs()), "allowed", words.exact(check().springTolerance()));
    }

    /** {@return the hardware in words} */
    public String rigName() {
        return new SignoffWords(view).rig(shown.rig());
    }

    /** {@return why it was not signed, or null} */
    public @Nullable String refused() {
        return refusal == null ? null : view.text("signoff.refused." + refusal.id());
    }

    /** {@return what is wrong with the PIN, or null} */
    public @Nullable String pinFault() {
        boolean wrong = refusal == Refusal.WRONG_PIN || refusal == Refusal.PIN_NOT_SIX_DIGITS;
        return wrong ? view.text("signoff.pin-again") : null;
    }

    /** {@return the names of the fields that are sent on} */
    public List<String> fields() {
        return DemonstrationForm.fields();
    }

    /** {@return what was typed into a field} */
    public String value(String name) {
        return form.value(name);
    }

    /** {@return which way round, in words} */
    public String orientation() {
        return view.quantity(shown.asLeft().orientation().word());
    }

    /** {@return a belt mark in words, exactly as read} */
    public String beltMarks() {
        SignoffWords words = new SignoffWords(view);
        return view.text(
                "signoff.both-sides",
                "left",
                words.exact(shown.asLeft().beltMarks().left()),
                "right",
                words.exact(shown.asLeft().beltMarks().right()));
    }
}
