package beltmark.trainee;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.Part;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** What somebody who reads millimetres types to give an answer. */
public final class Typing {

    private Typing() {}

    /** {@return the text of an answer, with its unit} */
    public static String of(Blank blank, Answer answer) {
        if (answer instanceof Answer.OfLength length) {
            return LengthPrinter.exact(length.length(), LengthUnit.MILLIMETRE);
        }
        if (answer instanceof Answer.OfNumber number) {
            String unit = ((NumberBlank) blank).units().metric().symbol();
            return BigDecimal.valueOf(number.amount()).toPlainString() + " " + unit;
        }
        if (answer instanceof Answer.OfChoice choice) {
            return choice.option();
        }
        if (answer instanceof Answer.OfSeveral several) {
            return String.join(" ", several.options());
        }
        return answer instanceof Answer.OfOrder order
                ? String.join(" ", order.items())
                : pairs(((Answer.OfMatch) answer).partners());
    }

    private static String pairs(Map<String, String> partners) {
        return partners.entrySet().stream()
                .map(pair -> pair.getKey() + ":" + pair.getValue())
                .collect(Collectors.joining(" "));
    }

    /** {@return the right texts to all blanks of a part, by the blank's id; may be changed} */
    public static Map<String, String> right(Part part) {
        Map<String, String> typed = new HashMap<>();
        part.blanks().forEach(blank -> typed.put(blank.id(), of(blank, blank.right())));
        return typed;
    }
}
