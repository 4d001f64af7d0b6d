package beltmark.hardware;

import beltmark.core.setup.HardwareCard;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * All hardware cards.
 *
 * @param view what all pages share
 * @param cards the cards
 */
public record CardsPage(View view, List<HardwareCard> cards) implements Page {

    /** {@return the name of a card} */
    public String name(HardwareCard card) {
        return view.text("hardware.name." + card.id());
    }
}
