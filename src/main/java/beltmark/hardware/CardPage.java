package beltmark.hardware;

import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Tip;
import beltmark.core.units.Length;
import beltmark.web.Page;
import beltmark.web.Told;
import beltmark.web.View;
import java.util.List;

/**
 * One hardware card.
 *
 * @param view what all pages share
 * @param card the card
 */
public record CardPage(View view, HardwareCard card) implements Page {

    /** {@return the name of the card} */
    public String title() {
        return view.text("hardware.name." + card.id());
    }

    /** {@return the tips that the card knows} */
    public List<Tip> tips() {
        return List.of(Tip.values());
    }

    /** {@return the name of a tip} */
    public String name(Tip tip) {
        return view.text(tip.word().key());
    }

    /** {@return where the datum edge goes with a tip, for each orientation} */
    public List<Told> offsets(Tip tip) {
        return List.of(
                line("overslung-offset", card.mountOffset(tip, Orientation.OVERSLUNG)),
                line("underslung-offset", card.mountOffset(tip, Orientation.UNDERSLUNG)));
    }

    /** {@return the chart of a tip, blade by blade} */
    public List<Told> chart(Tip tip) {
        return card.tip(tip).chart().stream()
                .map(row -> new Told(view.length(row.blade()), view.length(row.springLength())))
                .toList();
    }

    /** {@return what does not depend on the tip} */
    public List<Told> figures() {
        Reach overslung = card.reach(Orientation.OVERSLUNG);
        Reach underslung = card.reach(Orientation.UNDERSLUNG);
        return List.of(
                line("clearance", card.clearance()),
                line("sleeve", card.sleeve()),
                line("washer", card.washer()),
                line("free-length", card.spring().freeLength()),
                new Told(view.text("hardware.rate"), view.quantity(card.spring().rate())),
                line("overslung-below", overslung.low().abs()),
                line("underslung-above", underslung.high()),
                line("underslung-below", underslung.low().abs()),
                line("tolerance-mark", card.tolerances().mark()),
                line("tolerance-spring", card.tolerances().spring()),
                line("tolerance-sleeve", card.tolerances().sleeve()));
    }

    private Told line(String key, Length length) {
        return new Told(view.text("hardware." + key), view.length(length));
    }
}
