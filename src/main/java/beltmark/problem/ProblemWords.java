package beltmark.problem;

import beltmark.core.measure.Unit;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Exhibit;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.Part;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import beltmark.texts.Words;
import beltmark.web.Told;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How a problem is told in words.
 *
 * @param words the reader's words
 */
public record ProblemWords(Words words) {

    /** {@return the name of a family} */
    public String title(String family) {
        return words.say("problem.family." + family + ".title");
    }

    /** {@return what a family is about} */
    public String story(String family) {
        return words.say("problem.family." + family + ".story");
    }

    /** {@return the heading of a part} */
    public String title(Part part) {
        return words.say("problem.part." + part.id() + ".title");
    }

    /** {@return what a part asks} */
    public String ask(Part part) {
        return words.say("problem.part." + part.id() + ".ask");
    }

    /** {@return what a blank asks} */
    public String label(Part part, Blank blank) {
        return words.say("problem.blank." + part.path(blank));
    }

    /** {@return an option, an item of an order, or either side of a match} */
    public String option(String id) {
        return words.say("problem.option." + id);
    }

    /** {@return what is said of a slip} */
    public String slip(String part, String slip) {
        return words.say("problem.slip." + part + "." + slip);
    }

    /** {@return what is told} */
    public List<Told> told(List<Given> givens) {
        return givens.stream()
                .map(given -> new Told(words.say("problem.given." + given.id()), words.quantity(given.value())))
                .toList();
    }

    /** {@return the worked steps of a part} */
    public List<String> steps(Part part) {
        return part.steps().stream().map(words::step).toList();
    }

    /** {@return the tables of a part} */
    public List<ExhibitView> exhibits(Part part) {
        return part.exhibits().stream().map(this::exhibit).toList();
    }

    private ExhibitView exhibit(Exhibit exhibit) {
        return new ExhibitView(
                words.say("problem.exhibit." + exhibit.id()),
                exhibit.columns().stream()
                        .map(column -> words.say("problem.column." + column))
                        .toList(),
                exhibit.rows().stream()
                        .map(row -> row.stream().map(words::quantity).toList())
                        .toList());
    }

    /** {@return an answer as the person reads it} */
    public String told(Blank blank, Answer answer) {
        if (answer instanceof Answer.OfLength length) {
            return told((LengthBlank) blank, length.length());
        }
        if (answer instanceof Answer.OfNumber number) {
            return number((NumberBlank) blank, number.amount());
        }
        if (answer instanceof Answer.OfChoice choice) {
            return option(choice.option());
        }
        if (answer instanceof Answer.OfSeveral several) {
            return list(several.options().stream().sorted().toList());
        }
        return answer instanceof Answer.OfOrder order
                ? order.items().stream().map(this::option).collect(Collectors.joining(" → "))
                : ((Answer.OfMatch) answer)
                        .partners().entrySet().stream()
                                .sorted(java.util.Map.Entry.comparingByKey())
                                .map(pair -> option(pair.getKey()) + ": " + option(pair.getValue()))
                                .collect(Collectors.joining("; "));
    }

    /** Fractions finer than the own tape, and readings of a tape in millimetres, are told as they were read. */
    private String told(LengthBlank blank, Length length) {
        if (blank.tolerance().equals(Graduation.MILLIMETRE.step().times(0.5))) {
            return LengthPrinter.print(length, Graduation.MILLIMETRE);
        }
        boolean inches = words.graduation().unit() == LengthUnit.INCH;
        boolean fraction = length.roundedTo(Graduation.SIXTY_FOURTH_INCH).equals(length);
        return inches && fraction ? LengthPrinter.exact(length, LengthUnit.INCH) : words.length(length);
    }

    private String list(Collection<String> options) {
        return options.stream().map(this::option).collect(Collectors.joining("; "));
    }

    private String number(NumberBlank blank, double amount) {
        Unit unit = unit(blank);
        // without marks between thousands, so that it can be typed as it is told
        String number = words.number(blank.units().metric().in(unit, amount)).replace(",", "");
        return unit.symbol().isEmpty() ? number : number + "\u00a0" + unit.symbol();
    }

    /** {@return the unit in which a person tells a number} */
    public Unit unit(NumberBlank blank) {
        return words.graduation().unit() == LengthUnit.INCH
                ? blank.units().customary()
                : blank.units().metric();
    }
}
