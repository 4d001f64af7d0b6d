package beltmark.board;

import beltmark.core.qualification.Judge;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Standing;
import beltmark.qualification.StandingWords;
import beltmark.texts.Words;
import beltmark.web.Csv;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Where people stand as a file: a row for each person and qualification.
 *
 * @param words the language
 * @param rules the qualifications
 * @param on the day it is of
 */
record BoardCsv(Words words, List<QualificationRule> rules, LocalDate on) {

    String write(Map<Member, Judge> people) {
        List<String> columns = Stream.of(
                        "person", "crew", "qualification", "status", "last-day", "why", "next", "as-of")
                .map(column -> words.say("board.csv." + column))
                .toList();
        List<List<Object>> rows = new ArrayList<>();
        people.forEach((member, judge) ->
                rules.forEach(rule -> rows.add(row(member, rule, judge.standing(rule.id())))));
        return Csv.of(columns, rows);
    }

    private List<Object> row(Member member, QualificationRule rule, Standing standing) {
        StandingWords says = new StandingWords(words);
        return List.of(
                member.name(),
                member.crew(),
                says.name(rule.id()),
                says.status(standing),
                standing.findLastDay().map(LocalDate::toString).orElse(""),
                String.join(" ", says.reasons(standing)),
                says.next(standing),
                on.toString());
    }
}
