package beltmark.core.problem.bank.mark;

import beltmark.core.measure.TapeReading;
import beltmark.core.problem.Carry;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.LengthRange;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Solution;
import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reading a mark off a tape in sixteenths, thirty-seconds or millimetres, with a sound hook and with a broken one. */
public final class TapeReadings implements Recipe {

    private static final Length ONE_INCH = Length.ofInches(1);
    private static final Length HUNDRED_MILLIMETRES = Length.ofMillimetres(100);
    private static final List<Graduation> TAPES =
            List.of(Graduation.SIXTEENTH_INCH, Graduation.THIRTY_SECOND_INCH, Graduation.MILLIMETRE);

    private final Map<Graduation, LengthRange> marks = new EnumMap<>(Graduation.class);
    private final LengthSpan answers;

    /** Reads the ranges of the family; no hardware plays a part. */
    public TapeReadings(FamilyRanges ranges, List<HardwareCard> cards) {
        marks.put(Graduation.SIXTEENTH_INCH, ranges.length("sixteenths"));
        marks.put(Graduation.THIRTY_SECOND_INCH, ranges.length("thirtySeconds"));
        marks.put(Graduation.MILLIMETRE, ranges.length("millimetres"));
        answers = ranges.span("reading");
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        Graduation tape = draw.oneOf(TAPES);
        LengthRange range = marks.get(tape);
        if (range == null) {
            return Optional.empty();
        }
        Length heldBy = tape == Graduation.MILLIMETRE ? HUNDRED_MILLIMETRES : ONE_INCH;
        TapeScene scene = new TapeScene(tape, draw.length(range), draw.length(range), heldBy);
        if (isOnLongLine(scene.left(), tape) || isOnLongLine(scene.right(), tape)) {
            return Optional.empty();
        }
        List<Given> givens = List.of(new Given("tape", scene.word()));
        return Optional.of(new Posed(scene, givens, List.of(sound(scene), broken(scene))));
    }

    /** On a number or midway between two there is nothing to count. */
    private static boolean isOnLongLine(Length at, Graduation tape) {
        int perNumber = perNumber(tape);
        return TapeReading.ticks(at, tape) % (perNumber / 2) == 0;
    }

    private static int perNumber(Graduation tape) {
        return Math.toIntExact(
                TapeReading.numbered(tape).nanometres() / tape.step().nanometres());
    }

    private Part sound(TapeScene scene) {
        Solution<Length> reading = TapeReading.of(scene.left(), scene.tape(), Length.ZERO);
        List<Slip> slips = counting(scene.left(), scene.tape(), Length.ZERO);
        slips.add(new Slip("next-number", scene.left().plus(TapeReading.numbered(scene.tape()))));
        return part("tape-sound", List.of(), scene.tape(), reading, slips);
    }

    private Part broken(TapeScene scene) {
        Solution<Length> distance = TapeReading.of(scene.right(), scene.tape(), scene.heldBy());
        List<Slip> slips = counting(scene.right(), scene.tape(), scene.heldBy());
        slips.add(new Slip("held-line-forgotten", scene.right()));
        slips.add(new Slip("held-line-added", scene.right().plus(scene.heldBy())));
        if (scene.tape() == Graduation.MILLIMETRE) {
            slips.add(new Slip("inch-for-hundred", scene.right().minus(ONE_INCH)));
        }
        List<Given> givens = List.of(new Given("tape-held-by", new Graduated(scene.heldBy(), scene.tape())));
        return part("tape-broken", givens, scene.tape(), distance, slips);
    }

    private Part part(String id, List<Given> givens, Graduation tape, Solution<Length> right, List<Slip> slips) {
        LengthBlank blank =
                new LengthBlank("mark", right.result(), tape.step().times(0.5), answers, slips, Carry.none());
        return new Part(id, givens, List.of(blank), right.steps());
    }

    /** The wrong ways to count from the number under the mark, less the line the tape was held by. */
    private static List<Slip> counting(Length at, Graduation tape, Length heldBy) {
        Length number = TapeReading.numberUnder(at, tape).minus(heldBy);
        Length apart = TapeReading.numbered(tape);
        Length rest = at.minus(heldBy).minus(number);
        int ticks = TapeReading.ticks(at, tape);
        int middle = perNumber(tape) / 2;
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("from-the-number-above", number.plus(apart).minus(rest)));
        Length half = apart.times(0.5);
        slips.add(new Slip("from-the-middle-line", number.plus(ticks > middle ? rest.minus(half) : rest.plus(half))));
        if (tape != Graduation.MILLIMETRE && ticks < middle) {
            slips.add(new Slip("ticks-twice-as-coarse", number.plus(rest.times(2))));
            slips.add(new Slip("ticks-as-tenths", number.plus(apart.times(ticks / 10.0))));
        }
        return slips;
    }
}
