package beltmark.cli;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
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
        try {
            return get(typed);
        } catch (GradeRefused refused) {
            throw new TypeConversionException(
                    refused.sentence(Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.SIXTEENTH_INCH)));
        }
    }

    /** {@return the graduation of that name; throws {@link GradeRefused} when there is none} */
    static Graduation get(String typed) {
        Graduation known = KNOWN.get(typed);
        if (known == null) {
            throw GradeRefused.unknown(GradeFault.UNKNOWN_UNIT, typed, List.of("in", "in32", "mm"));
        }
        return known;
    }
}
