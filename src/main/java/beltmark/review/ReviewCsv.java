package beltmark.review;

import beltmark.texts.Words;
import beltmark.web.Csv;
import java.util.List;
import java.util.stream.Collectors;

/** Finished sittings as a file. */
record ReviewCsv(Words words) {

    private static final List<String> COLUMNS = List.of(
            "person",
            "crew",
            "finished-utc",
            "version",
            "right",
            "asked",
            "needed",
            "passed",
            "critical-missed",
            "record");

    String write(List<FinishedSitting> sittings) {
        List<String> columns = COLUMNS.stream()
                .map(column -> words.say("review.csv." + column))
                .toList();
        return Csv.of(columns, sittings.stream().map(this::cells).toList());
    }

    private List<Object> cells(FinishedSitting sitting) {
        QuestionNames names = new QuestionNames(words);
        return List.of(
                sitting.person(),
                sitting.crew(),
                sitting.finishedAt().toString(),
                sitting.version(),
                sitting.right(),
                sitting.asked(),
                sitting.needed(),
                words.say("review.csv." + (sitting.passed() ? "yes" : "no")),
                sitting.criticalMisses().stream().map(names::name).collect(Collectors.joining("; ")),
                sitting.record());
    }
}
