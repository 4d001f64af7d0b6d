package beltmark.signoff;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Everybody whose role it is to sign off.
 *
 * @param view what all pages share
 * @param candidates by name
 */
public record AssessorsPage(View view, List<Fitter> candidates) implements Page {

    public AssessorsPage {
        candidates = List.copyOf(candidates);
    }
}
