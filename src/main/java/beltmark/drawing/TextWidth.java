package beltmark.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text is likely to be. The browser chooses the typeface, so this is an estimate: the widths of a wide sans
 * serif in ems (DejaVu Sans, rounded up), so that texts stay apart in any other.
 */
public final class TextWidth {

    private static final String NARROW = "ijlI.,:;'|!";
    private static final String SLIM = "frt ()[]/-";
    private static final String WIDE = "mwMW";
    private static final double NARROW_EMS = 0.34;
    private static final double SLIM_EMS = 0.4;
    private static final double WIDE_EMS = 0.98;
    private static final double CAPITAL_EMS = 0.76;
    private static final double USUAL_EMS = 0.63;

    /** How much wider bold letters are. */
    private static final double BOLD = 1.1;

    private TextWidth() {}

    /** {@return the width of a bold text of that height, in the same unit} */
    public static double ofBold(String text, double textHeight) {
        return BOLD * of(text, textHeight);
    }

    /** {@return the width of a text of that height, in the same unit} */
    public static double of(String text, double textHeight) {
        return text.chars().mapToDouble(TextWidth::ems).sum() * textHeight;
    }

    /** {@return the text in lines of at most that width, broken at spaces; a longer word has a line of its own} */
    public static List<String> wrap(String text, double textHeight, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && of(longer, textHeight) > width) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    private static double ems(int character) {
        if (NARROW.indexOf(character) >= 0) {
            return NARROW_EMS;
        }
        if (SLIM.indexOf(character) >= 0) {
            return SLIM_EMS;
        }
        if (WIDE.indexOf(character) >= 0) {
            return WIDE_EMS;
        }
        return Character.isUpperCase(character) ? CAPITAL_EMS : USUAL_EMS;
    }
}
