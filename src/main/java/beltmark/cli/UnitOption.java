package beltmark.cli;

import beltmark.core.units.Graduation;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads which graduation lengths are told and typed in: in, in32 or mm. */
final class UnitOption implements ITypeConverter<Graduation> {

    private static final Map<String, Graduation> KNOWN = Map.of(
            "in", Graduation.SIXTEENTH_INCH,
            "in32", Graduation.THIRTY_SECOND_INCH,
            "mm", Graduation.MILLIMETRE);

    @Override
    public Graduation convert(String typed) {
        return find(typed);
    }

    static Graduation find(String typed) {
        Graduation known = KNOWN.get(typed);
        if (known == null) {
            throw new TypeConversionException("the unit is one of " + String.join(", ", List.of("in", "in32", "mm")));
        }
        return known;
    }
}
