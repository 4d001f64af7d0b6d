package beltmark.drawing.mark;

import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.texts.Words;
import java.util.Map;

/** What the drawing of a post says to people who hear it. */
record PostWords(PostDrawing post, Words words) {

    String description(boolean told) {
        Map<String, String> values = Map.of(
                "start", post.start().name(),
                "found", post.found().name(),
                "startHeight", inches(post.start().height(), words),
                "foundHeight", inches(post.found().height(), words),
                "apart",
                        inches(
                                post.found()
                                        .height()
                                        .minus(post.start().height())
                                        .abs(),
                                words));
        boolean above = post.found().height().compareTo(post.start().height()) > 0;
        String seen = words.say(above ? "drawing-mark.post.above" : "drawing-mark.post.below", values);
        return told ? seen + " " + words.say("drawing-mark.post.worked", values) : seen;
    }

    static String inches(Length length, Words words) {
        return words.quantity(new Graduated(length, Graduation.SIXTEENTH_INCH));
    }
}
