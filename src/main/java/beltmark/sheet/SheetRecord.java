package beltmark.sheet;

import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Sides;
import beltmark.core.sheet.SetupSheet;
import beltmark.core.units.Length;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The body of a {@code sheet.saved}: the form with every unit spelt out, and what it came to with that version of the card.
 *
 * @param crew the crew whose sheet it is
 * @param card the hardware card's id
 * @param cardVersion the hardware card's version
 * @param typed the form
 * @param orientation which way round; null when neither fits
 * @param mountMarks the mount marks; null when there are none
 * @param springLength the spring length to set; null when there is none
 */
public record SheetRecord(
        long crew,
        String card,
        int cardVersion,
        Map<String, String> typed,
        @Nullable String orientation,
        @Nullable Sides mountMarks,
        @Nullable Length springLength) {

    static SheetRecord of(long crew, SheetForm form, SetupSheet sheet) {
        return new SheetRecord(
                crew,
                sheet.installation().card().id(),
                sheet.installation().card().version(),
                form.kept(),
                sheet.mounting().way().result().map(Orientation::id).orElse(null),
                sheet.mounting().marks().result().map(MountMarks::heights).orElse(null),
                sheet.springs().setting().result().map(set -> set.measured()).orElse(null));
    }
}
