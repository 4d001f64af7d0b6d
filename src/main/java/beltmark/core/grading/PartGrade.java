package beltmark.core.grading;

import beltmark.core.problem.Blank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.units.LengthUnit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The judgement of all blanks of a part.
 *
 * @param grades by the blank's id, in the order of the part
 */
public record PartGrade(Map<String, Grade> grades) {

    public PartGrade {
        grades = Collections.unmodifiableMap(new LinkedHashMap<>(grades));
    }

    /**
     * Judges a part, blank by blank; a later blank may be right from the answer to an earlier one.
     *
     * @param part the part
     * @param typed what was typed, by the blank's id; a blank that is missing was not filled in
     * @param unit the unit of lengths typed without one
     * @param own the own figures from earlier parts
     * @return the judgement
     */
    public static PartGrade of(Part part, Map<String, String> typed, LengthUnit unit, OwnFigures own) {
        Map<String, Grade> grades = new LinkedHashMap<>();
        OwnFigures sofar = own;
        for (Blank blank : part.blanks()) {
            Grade grade = Grader.grade(blank, typed.get(blank.id()), unit, sofar);
            grades.put(blank.id(), grade);
            sofar = with(sofar, part, blank, grade);
        }
        return new PartGrade(grades);
    }

    private static OwnFigures with(OwnFigures own, Part part, Blank blank, Grade grade) {
        return grade.findAnswer()
                .map(answer -> own.with(part.path(blank), answer))
                .orElse(own);
    }

    /** {@return the own figures and the answers to this part} */
    public OwnFigures addTo(OwnFigures own, Part part) {
        OwnFigures more = own;
        for (Blank blank : part.blanks()) {
            more = with(more, part, blank, grades.getOrDefault(blank.id(), Grade.unreadable(Unreadable.BLANK)));
        }
        return more;
    }

    /** {@return the judgement of one blank, if it was judged} */
    public Optional<Grade> find(String blank) {
        return Optional.ofNullable(grades.get(blank));
    }

    /** {@return whether every blank could be read; only then does the answer count} */
    public boolean isReadable() {
        return grades.values().stream().noneMatch(grade -> grade.verdict() == Verdict.UNREADABLE);
    }

    /** {@return whether every blank is right, also as a carried figure} */
    public boolean isAccepted() {
        return grades.values().stream().allMatch(grade -> grade.verdict().isAccepted());
    }

    /** {@return whether every blank is right in itself} */
    public boolean isRight() {
        return grades.values().stream().allMatch(grade -> grade.verdict() == Verdict.RIGHT);
    }

    /** {@return the verdict of the worst blank, which is the part's} */
    public Verdict worst() {
        return grades.values().stream()
                .map(Grade::verdict)
                .max(Verdict::compareTo)
                .orElse(Verdict.RIGHT);
    }
}
