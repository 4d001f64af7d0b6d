package beltmark.drawing;

import beltmark.core.units.Length;
import beltmark.texts.Words;
import java.util.Locale;
import java.util.Map;

/**
 * What a tape close-up says to people who hear it. It counts graduations, as one does who sees them, and leaves the
 * adding up to the reader.
 */
final class TapeWords {

    /** A mark nearer to a graduation than this part of a step looks as if it were on it. */
    private static final double LOOKS_ON = 0.1;
    /** A mark farther from the nearest graduation than this part of a step looks as if it were midway. */
    private static final double LOOKS_MIDWAY = 0.4;

    private final TapeCloseUp tape;
    private final TapeFace face;
    private final Words words;

    TapeWords(TapeCloseUp tape, TapeFace face, Words words) {
        this.tape = tape;
        this.face = face;
        this.words = words;
    }

    String title() {
        return words.say("drawing.tape.title", Map.of("mark", mark(), "side", side()));
    }

    String description(Length low, Length high, boolean told) {
        String graduations = face.graduation().name().toLowerCase(Locale.ROOT).replace('_', '-');
        String seen = words.say(
                "drawing.tape.description",
                Map.of(
                        "graduations", words.say("drawing.tape.graduation." + graduations),
                        "low", face.print(low, words),
                        "high", face.print(high, words),
                        "where", where()));
        return told
                ? seen + " " + words.say("drawing.tape.reading", Map.of("reading", face.print(tape.height(), words)))
                : seen;
    }

    private String where() {
        Length number = face.numberUnder(tape.height());
        Length nearest = tape.height().roundedTo(face.graduation());
        Length step = face.graduation().step();
        double off = (double) tape.height().minus(nearest).nanometres() / step.nanometres();
        boolean midway = Math.abs(off) > LOOKS_MIDWAY;
        Length below = midway && off < 0 ? nearest.minus(step) : nearest;
        long count = below.minus(number).nanometres() / step.nanometres();
        String key = midway ? "midway" : Math.abs(off) < LOOKS_ON ? "on" : off > 0 ? "little-above" : "little-below";
        return words.say(
                "drawing.tape.where." + key,
                Map.of("mark", mark(), "number", face.number(number), "count", count, "next", count + 1));
    }

    private String mark() {
        return words.say("drawing.mark." + tape.mark().id());
    }

    private String side() {
        return words.say("drawing.side." + tape.side().id());
    }
}
