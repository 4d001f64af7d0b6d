package beltmark.signoff;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Whose demonstration it is, and what was signed last.
 *
 * @param view what all pages share
 * @param fitters who may be signed off
 * @param signed what the supervisor signed last, the latest first
 * @param start where the form of a fitter is, below the fitter; empty while the hardware has still to be picked
 */
public record FittersPage(View view, List<Fitter> fitters, List<SignedLine> signed, String start) implements Page {

    public FittersPage {
        fitters = List.copyOf(fitters);
        signed = List.copyOf(signed);
    }

    /** {@return what was shown, in words} */
    public String line(SignedLine line) {
        return view.text(
                line.passed() ? "signoff.signed-line" : "signoff.not-passed-line",
                "person",
                line.person(),
                "card",
                view.text("hardware.name." + line.card()),
                "on",
                line.on());
    }
}
