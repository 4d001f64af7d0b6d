package beltmark.problem;

import beltmark.core.grading.Unreadable;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.MatchBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.SeveralBlank;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.texts.Words;
import beltmark.web.Form;
import beltmark.web.Option;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Makes the fields of a part, and reads them back.
 *
 * @param words the reader's words
 * @param part the part
 */
public record BlankFields(Words words, Part part) {

    private static final Pattern BETWEEN = Pattern.compile("[\\s,]+");

    /** {@return the kind of a blank, part of the names of templates and of JSON} */
    public static String kind(Blank blank) {
        if (blank instanceof LengthBlank) {
            return "length";
        }
        if (blank instanceof NumberBlank) {
            return "number";
        }
        if (blank instanceof ChoiceBlank) {
            return "choice";
        }
        if (blank instanceof SeveralBlank) {
            return "several";
        }
        return blank instanceof OrderBlank ? "order" : "match";
    }

    /** {@return what was sent for each blank of a part, as the grader reads it, by the blank's id} */
    public static Map<String, String> typed(Part part, Form form) {
        return typed(part, form, "");
    }

    /** {@return what was sent for each blank of a part whose fields have that prefix} */
    public static Map<String, String> typed(Part part, Form form, String prefix) {
        Map<String, String> typed = new LinkedHashMap<>();
        part.blanks().forEach(blank -> typed.put(blank.id(), typed(blank, form, prefix + blank.id())));
        return typed;
    }

    private static String typed(Blank blank, Form form, String name) {
        if (blank instanceof SeveralBlank) {
            return String.join(" ", form.all(name));
        }
        List<String> marked = marked(blank);
        if (marked.isEmpty() || form.has(name)) {
            return form.text(name);
        }
        return marked.stream()
                .filter(item -> !form.text(name + "." + item).isEmpty())
                .map(item -> item + ":" + form.text(name + "." + item))
                .collect(Collectors.joining(" "));
    }

    private static List<String> marked(Blank blank) {
        if (blank instanceof OrderBlank order) {
            return order.items();
        }
        return blank instanceof MatchBlank match ? match.things() : List.of();
    }

    /** {@return a blank as a field that shows what was typed} */
    public BlankField field(Blank blank, String typed, @Nullable Unreadable fault) {
        return new BlankField(
                blank.id(),
                kind(blank),
                new ProblemWords(words).label(part, blank),
                options(offered(blank)),
                partners(blank),
                typed,
                marks(blank, typed),
                blank instanceof NumberBlank number
                        ? new ProblemWords(words).unit(number).symbol()
                        : "",
                blank instanceof LengthBlank length && length.onDrawing(),
                fault == null ? reading(blank, typed) : "",
                fault == null ? null : sentence(blank, typed, fault));
    }

    private static List<String> offered(Blank blank) {
        if (blank instanceof ChoiceBlank choice) {
            return choice.options();
        }
        return blank instanceof SeveralBlank several ? several.options() : marked(blank);
    }

    private List<Option> partners(Blank blank) {
        if (blank instanceof OrderBlank order) {
            return IntStream.rangeClosed(1, order.items().size())
                    .mapToObj(place -> new Option("" + place, "" + place))
                    .toList();
        }
        return blank instanceof MatchBlank match ? options(match.partners()) : List.of();
    }

    private List<Option> options(List<String> ids) {
        return ids.stream()
                .map(id -> new Option(id, new ProblemWords(words).option(id)))
                .toList();
    }

    private static Map<String, String> marks(Blank blank, String typed) {
        Map<String, String> marks = new HashMap<>();
        if (blank instanceof SeveralBlank || !marked(blank).isEmpty()) {
            int place = 0;
            for (String token : BETWEEN.split(typed.strip(), -1)) {
                int colon = token.indexOf(':');
                place++;
                String bare = blank instanceof SeveralBlank ? "on" : "" + place;
                marks.put(colon < 0 ? token : token.substring(0, colon), colon < 0 ? bare : token.substring(colon + 1));
            }
        }
        return marks;
    }

    private String reading(Blank blank, String typed) {
        LengthReading reading = LengthReader.read(typed, words.graduation().unit());
        return blank instanceof LengthBlank && reading.isReadable() ? words.reading(reading) : "";
    }

    /** {@return in one sentence why what was typed could not be read} */
    public String sentence(Blank blank, String typed, Unreadable why) {
        if (blank instanceof LengthBlank length) {
            LengthReading reading = LengthReader.read(typed, words.graduation().unit());
            return words.fault(reading, length.plausible()).orElseThrow();
        }
        if (blank instanceof NumberBlank number) {
            return words.say(
                    "problem.unreadable.number." + why.id(),
                    Map.of("unit", new ProblemWords(words).unit(number).symbol()));
        }
        return words.say("problem.unreadable." + kind(blank) + "." + why.id());
    }
}
