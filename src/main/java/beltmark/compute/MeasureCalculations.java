package beltmark.compute;

import beltmark.core.measure.Rounding;
import beltmark.core.measure.TapeTolerance;
import beltmark.core.measure.ToleranceStack;
import beltmark.core.measure.Unit;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.PreciseLength;
import java.util.ArrayList;
import java.util.List;

/** What can be computed of readings off a tape. */
final class MeasureCalculations {

    private static final List<String> UNITS = Choices.ids(Unit.values(), Unit::symbol);

    private MeasureCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(
                Calculation.several(
                                "stack",
                                MeasureCalculations::stack,
                                Field.of("tolerances", Kind.LENGTHS),
                                Field.of("shares", Kind.NUMBERS)
                                        .also("factors", "coefficients")
                                        .optional())
                        .giving("worstMm", "mm", ToleranceStack::worst)
                        .giving("likelyMm", "mm", ToleranceStack::likely),
                Calculation.of(
                        "tape-tolerance",
                        "mm",
                        g -> TapeTolerance.of(g.length("tape")),
                        Field.of("tape", Kind.LENGTH).also("tapeLength", "length")),
                rounded(),
                Calculation.of(
                        "round-decimals",
                        "",
                        g -> Rounding.toPlaces(g.number("number"), g.number("places")),
                        Field.of("number", Kind.NUMBER).also("value"),
                        Field.of("places", Kind.NUMBER)),
                Calculation.several(
                                "read-length",
                                MeasureCalculations::read,
                                Field.of("text", Kind.TEXT),
                                Field.choice("ownUnit", List.of("in", "mm")).optional())
                        .giving("valueMm", "mm", length -> length)
                        .giving("fraction", "", PrintedLength::new),
                Calculation.several(
                                "convert",
                                MeasureCalculations::convert,
                                Field.of("amount", Kind.NUMBER).also("value"),
                                Field.choice("from", UNITS),
                                Field.choice("to", UNITS))
                        .giving("amount", "", converted -> converted)
                        .also("convert-unit"));
    }

    private static Calculation<Length> rounded() {
        return Calculation.several(
                        "round-length",
                        g -> Rounding.toGraduation(g.length("length"), Graduations.of(g)),
                        Field.of("length", Kind.LENGTH),
                        Graduations.FIELD)
                .giving("roundedMm", "mm", length -> length)
                .giving("fraction", "", PrintedLength::new)
                .also("round-to-graduation");
    }

    private static Solution<ToleranceStack> stack(Given given) {
        List<PreciseLength> tolerances = given.lengths("tolerances");
        List<Double> shares = given.has("shares") ? given.numbers("shares") : List.of();
        if (!shares.isEmpty() && shares.size() != tolerances.size()) {
            throw new LineRefused(LineFault.NOT_A_LIST).with("field", "shares");
        }
        List<ToleranceStack.Member> members = new ArrayList<>();
        for (int i = 0; i < tolerances.size(); i++) {
            members.add(new ToleranceStack.Member(tolerances.get(i), shares.isEmpty() ? 1 : shares.get(i)));
        }
        return ToleranceStack.of(members);
    }

    private static Solution<Length> read(Given given) {
        LengthUnit own = given.text("ownUnit", "in").equals("mm") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        LengthReading reading = LengthReader.read(given.text("text"), own);
        LengthReading.Fault fault = reading.fault();
        if (fault != null) {
            throw new LineRefused(LineFault.NOT_A_LENGTH).with("field", "text").with("reading", fault);
        }
        Length length = reading.getLength();
        return Solution.of(length, Step.of("read-length", "length", length));
    }

    private static Solution<Unit.Measured> convert(Given given) {
        Unit from = Choices.get(Unit.values(), Unit::symbol, given.text("from"));
        return from.convert(given.number("amount"), Choices.get(Unit.values(), Unit::symbol, given.text("to")));
    }
}
