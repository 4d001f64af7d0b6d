package beltmark.content;

import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.LengthRange;
import beltmark.core.problem.NumberRange;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.problem.bank.Bank;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads the file of one problem family: what is drawn, and what an answer can be at all. */
final class FamilyFile {

    private FamilyFile() {}

    /** {@return the family of the file; none that has a fault} */
    static Optional<ProblemFamily> read(ContentFile file, List<HardwareCard> cards, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        String id = fields.text("id");
        int version = fields.whole("version");
        fields.text("source");
        Map<String, LengthRange> lengths = named(fields, "lengths", FamilyFile::lengths);
        Map<String, NumberRange> numbers = named(fields, "numbers", FamilyFile::numbers);
        Map<String, LengthSpan> spans = named(fields, "answers", FamilyFile::span);
        if (!Bank.ids().contains(id)) {
            fields.faultAt("id", "There is no family " + id + "; known are " + String.join(", ", Bank.ids()) + ".");
        }
        return fields.build(() -> Bank.make(new FamilyRanges(id, version, lengths, numbers, spans), cards))
                .flatMap(Function.identity());
    }

    private static <T> Map<String, T> named(Fields fields, String name, Function<Fields, Optional<T>> reader) {
        Map<String, T> named = new LinkedHashMap<>();
        if (fields.has(name)) {
            Fields all = fields.fields(name);
            all.names().forEach(one -> reader.apply(all.fields(one)).ifPresent(value -> named.put(one, value)));
            all.build(() -> named);
        }
        return named;
    }

    private static Optional<LengthRange> lengths(Fields range) {
        Length from = range.length("from");
        Length to = range.length("to");
        Length step = range.length("step");
        return range.build(() -> new LengthRange(from, to, step));
    }

    private static Optional<NumberRange> numbers(Fields range) {
        double from = range.amount("from");
        double to = range.amount("to");
        double step = range.number("step");
        return range.build(() -> new NumberRange(from, to, step));
    }

    private static Optional<LengthSpan> span(Fields span) {
        Length from = span.length("from");
        Length to = span.length("to");
        return span.build(() -> new LengthSpan(from, to));
    }
}
