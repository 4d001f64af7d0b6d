package beltmark.signoff;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Which hardware was set up.
 *
 * @param view what all pages share
 * @param fitter who showed it
 * @param rigs the hardware there is
 */
public record RigsPage(View view, Fitter fitter, List<Rig> rigs) implements Page {

    public RigsPage {
        rigs = List.copyOf(rigs);
    }

    /** {@return where the form of a rig is} */
    public String path(Rig rig) {
        return "/sign-off/" + fitter.id() + "/" + rig.card().id() + "/"
                + rig.tip().id();
    }
}
