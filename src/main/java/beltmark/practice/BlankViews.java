package beltmark.practice;

import beltmark.core.grading.Grade;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Unreadable;
import beltmark.core.grading.Verdict;
import beltmark.core.grading.Working.PartWorking;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.practice.PartView.BlankView;
import beltmark.texts.Words;
import beltmark.web.Option;
import beltmark.web.View;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes what a page shows of the blanks of one part. */
final class BlankViews {

    private final Words words;
    private final Attempt attempt;
    private final PartWorking working;
    private final boolean solved;

    BlankViews(View view, Attempt attempt, PartWorking working, boolean solved) {
        this.words = view.words();
        this.attempt = attempt;
        this.working = working;
        this.solved = solved;
    }

    /** {@return a blank to be filled in; after an unreadable sending with what was sent, else with what was recorded last} */
    BlankView open(Blank blank, PartGrade sent, Map<String, String> typed) {
        Grade grade = sent.find(blank.id()).orElse(null);
        if (grade == null) {
            return recorded(blank);
        }
        String value = typed.getOrDefault(blank.id(), "");
        String error = grade.unreadable() == null ? null : sentence(blank, value, grade.unreadable());
        return view(blank, value, null, error);
    }

    /** {@return a blank of a part that is done or still to come} */
    BlankView closed(Blank blank) {
        return recorded(blank);
    }

    private BlankView recorded(Blank blank) {
        PartGrade last = working.last();
        Grade grade = last == null ? null : last.find(blank.id()).orElse(null);
        String typed = attempt.typed().getOrDefault(working.part().path(blank), "");
        return view(blank, typed, grade, null);
    }

    private BlankView view(Blank blank, String typed, @Nullable Grade grade, @Nullable String error) {
        Answer answer = grade == null ? null : grade.answer();
        return new BlankView(
                blank.id(),
                words.say("problem.blank." + Part.path(working.part().id(), blank.id())),
                options(blank),
                typed,
                answer == null ? "" : told(answer),
                error == null ? reading(blank, typed) : "",
                error,
                grade == null ? null : grade.verdict().id(),
                grade == null ? "" : sentence(grade),
                solved ? told(blank.right()) : "");
    }

    private List<Option> options(Blank blank) {
        return blank instanceof ChoiceBlank choice
                ? choice.options().stream()
                        .map(option -> new Option(option, words.say("problem.option." + option)))
                        .toList()
                : List.of();
    }

    private String told(Answer answer) {
        return answer instanceof Answer.OfLength length
                ? words.length(length.length())
                : words.say("problem.option." + ((Answer.OfChoice) answer).option());
    }

    private String reading(Blank blank, String typed) {
        LengthReading reading = LengthReader.read(typed, words.graduation().unit());
        return blank instanceof LengthBlank && reading.isReadable() ? words.reading(reading) : "";
    }

    private String sentence(Grade grade) {
        if (grade.verdict() == Verdict.WRONG && working.isClosed()) {
            return ""; // nothing is left to go through once more
        }
        return grade.verdict() == Verdict.SLIP
                ? words.say("problem.slip." + working.part().id() + "." + grade.slip())
                : words.say("practice." + grade.verdict().id());
    }

    private String sentence(Blank blank, String typed, Unreadable why) {
        if (!(blank instanceof LengthBlank length)) {
            return words.say("practice.unreadable." + (why == Unreadable.BLANK ? "nothing-picked" : "not-an-option"));
        }
        LengthReading reading = LengthReader.read(typed, words.graduation().unit());
        return words.fault(reading, length.plausible()).orElseThrow();
    }
}
