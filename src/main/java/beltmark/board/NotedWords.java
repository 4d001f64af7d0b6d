package beltmark.board;

import beltmark.web.View;
import java.util.Optional;

/** Says what a reader of a signed demonstration must not overlook: flags, critical observations missed, explanations. */
record NotedWords(View view) {

    private static final String FLAG = "flag.";
    private static final String MISSED = "missed.";
    private static final String EXPLAINED = "explained.";

    /** {@return what such a line is about; empty for a measure} */
    Optional<String> what(Evidence.Figure figure) {
        String what = figure.what();
        if (what.startsWith(FLAG)) {
            return Optional.of(view.text("signoff.flags"));
        }
        if (what.startsWith(MISSED)) {
            return Optional.of(view.text("signoff.observation." + what.substring(MISSED.length())));
        }
        return what.startsWith(EXPLAINED)
                ? Optional.of(view.text("board.explained", "what", measure(what.substring(EXPLAINED.length()))))
                : Optional.empty();
    }

    /** {@return what such a line says; empty for a measure} */
    Optional<String> said(Evidence.Figure figure) {
        String what = figure.what();
        if (what.startsWith(FLAG)) {
            return Optional.of(view.text("signoff.flag." + what.substring(FLAG.length())));
        }
        if (what.startsWith(MISSED)) {
            return Optional.of(view.text("signoff.answer." + figure.typed()));
        }
        return what.startsWith(EXPLAINED) ? Optional.of(figure.typed()) : Optional.empty();
    }

    private String measure(String name) {
        String ofOneSide = "signoff.measure." + name.replaceFirst("-(left|right)$", ".$1");
        if (view.words().has(ofOneSide)) {
            return view.text(ofOneSide);
        }
        String reading = "signoff.reading." + name + ".title";
        return view.text(view.words().has(reading) ? reading : "signoff.springs.title");
    }
}
