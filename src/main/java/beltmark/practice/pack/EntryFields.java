package beltmark.practice.pack;

import beltmark.core.grading.Grade;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Unreadable;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.practice.pack.EnterPage.EnteredProblem;
import beltmark.problem.BlankField;
import beltmark.problem.BlankFields;
import beltmark.problem.ProblemWords;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Makes the fields in which a trainer types what was written on a sheet. */
final class EntryFields {

    private final Packs packs;
    private final Pack.Sheet sheet;
    private final Words words;
    private final Map<String, Map<String, String>> written;
    private final Map<String, PartGrade> grades;

    EntryFields(
            Packs packs,
            Texts texts,
            Pack.Sheet sheet,
            Map<String, Map<String, String>> written,
            Map<String, PartGrade> grades) {
        this.packs = packs;
        this.sheet = sheet;
        this.words = texts.words(sheet.person().language(), sheet.person().graduation());
        this.written = written;
        this.grades = grades;
    }

    List<EnteredProblem> problems() {
        List<EnteredProblem> problems = new ArrayList<>();
        for (int place = 0; place < sheet.problems().size(); place++) {
            Problem problem = packs.problem(sheet.problems().get(place));
            List<BlankField> fields = new ArrayList<>();
            for (Part part : problem.parts()) {
                for (Blank blank : part.blanks()) {
                    fields.add(field(place, part, blank));
                }
            }
            String title = new ProblemWords(words).title(problem.family());
            problems.add(new EnteredProblem(place + 1, problem.code().text(), title, fields));
        }
        return problems;
    }

    private BlankField field(int place, Part part, Blank blank) {
        String key = place + "." + part.id();
        String typed = written.getOrDefault(key, Map.of()).getOrDefault(blank.id(), "");
        BlankField field = new BlankFields(words, part).field(blank, typed, fault(key, blank));
        return field.named(key + "." + blank.id());
    }

    private @Nullable Unreadable fault(String key, Blank blank) {
        PartGrade grade = grades.get(key);
        return grade == null
                ? null
                : grade.find(blank.id()).map(Grade::unreadable).orElse(null);
    }
}
