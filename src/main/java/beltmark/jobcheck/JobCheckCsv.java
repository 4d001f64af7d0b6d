package beltmark.jobcheck;

import beltmark.core.qualification.Standing;
import beltmark.qualification.StandingWords;
import beltmark.texts.Words;
import beltmark.web.Csv;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The answer of the job check as a file: a row for each person and qualification.
 *
 * @param words the language
 * @param query what was asked
 */
record JobCheckCsv(Words words, JobQuery query) {

    String write(JobCheck.Answer answer) {
        List<String> columns = Stream.of(
                        "day",
                        "person",
                        "crew",
                        "qualification",
                        "status",
                        "last-day",
                        "lapses",
                        "why",
                        "next",
                        "proposed")
                .map(column -> words.say("jobcheck.csv." + column))
                .toList();
        List<List<Object>> rows = new ArrayList<>();
        answer.people().forEach(one -> one.standings().forEach(stands -> rows.add(row(answer, one, stands))));
        return Csv.of(columns, rows);
    }

    private List<Object> row(JobCheck.Answer answer, Checked one, Checked.For stands) {
        StandingWords says = new StandingWords(words);
        Standing standing = stands.standing();
        boolean proposed = answer.seats().stream()
                .filter(seat -> seat.qualification().equals(stands.qualification()))
                .flatMap(seat -> seat.candidate().stream())
                .anyMatch(candidate -> candidate.person() == one.member().id());
        return List.of(
                query.asOf().on().toString(),
                one.member().name(),
                one.member().crew(),
                says.name(stands.qualification()),
                says.status(standing),
                standing.findLastDay().map(LocalDate::toString).orElse(""),
                yes(one.lapsing().contains(stands.qualification())),
                String.join(" ", says.reasons(standing)),
                says.next(standing),
                yes(proposed));
    }

    private String yes(boolean is) {
        return words.say(is ? "jobcheck.csv.yes" : "jobcheck.csv.no");
    }
}
