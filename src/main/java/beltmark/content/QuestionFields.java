package beltmark.content;

import beltmark.core.lockout.Audience;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Basis;
import beltmark.core.lockout.Mark;
import beltmark.core.lockout.Match;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Source;
import beltmark.core.lockout.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads questions of the lockout quiz and sees that each has its source, its key and its texts. */
final class QuestionFields {

    private final String texts;
    private final Set<String> textKeys;
    private final Set<String> ids = new HashSet<>();

    /**
     * @param texts what the keys of all texts begin with
     * @param textKeys every key that has a text in every language
     */
    QuestionFields(String texts, Set<String> textKeys) {
        this.texts = texts;
        this.textKeys = textKeys;
    }

    /** {@return the question of a mapping in the file of a topic} */
    Optional<BankQuestion> read(Fields fields, String topic) {
        String id = fields.text("id");
        if (!ids.add(id)) {
            fields.faultAt("id", "There is another question " + id + " above.");
        }
        QuestionKind kind = fields.oneOf("kind", List.of(QuestionKind.values()), QuestionKind::id);
        String point = fields.has("point") ? fields.text("point") : null;
        Audience audience = fields.oneOf("audience", List.of(Audience.values()), Audience::id);
        boolean reviewed = fields.yes("reviewed");
        Source source = source(fields);
        Optional<Question> question =
                kind == QuestionKind.MATCH ? match(fields, id, source) : marked(fields, id, kind, source);
        for (String part : List.of("name", "ask", "why")) {
            checkText(fields, "id", "question." + id + "." + part);
        }
        return question.flatMap(sound -> fields.build(
                () -> new BankQuestion(sound.asCritical(point != null), topic, audience, point, reviewed)));
    }

    private Source source(Fields fields) {
        Mark mark = fields.oneOf("mark", List.of(Mark.values()), Mark::id);
        Basis basis = fields.oneOf("basis", List.of(Basis.values()), Basis::id);
        if (mark == Mark.INFERENCE && basis == Basis.RULE) {
            fields.faultAt("basis", "What no text says in these words is no rule.");
        }
        List<String> facts = fields.texts("facts");
        String paragraph = fields.text("source");
        List<String> ruleSets = fields.texts("rules");
        ruleSets.forEach(rules -> checkText(fields, "rules", "rules." + rules));
        boolean sound = !facts.isEmpty() && !ruleSets.isEmpty();
        return sound
                ? new Source(facts, paragraph, ruleSets, mark, basis)
                : new Source(List.of("?"), "?", List.of("?"));
    }

    private Optional<Question> marked(Fields fields, String id, QuestionKind kind, Source source) {
        List<String> options = fields.texts("options");
        List<String> right = fields.texts("right");
        checkKey(fields, kind, options, right);
        options.forEach(option -> checkOption(fields, "options", id, option));
        if (kind == QuestionKind.SPOTS && !Spot.ids().containsAll(options)) {
            fields.faultAt("options", "Spots on the drawing are " + String.join(", ", Spot.ids()) + ".");
        }
        return made(fields, () -> new Question(id, kind, false, options, right, source));
    }

    private Optional<Question> match(Fields fields, String id, Source source) {
        List<String> rows = fields.texts("rows");
        List<List<String>> columns = fields.textLists("columns");
        List<String> right = new ArrayList<>();
        for (String line : fields.texts("right")) {
            List<String> words = Arrays.asList(line.split(" ", -1));
            words.subList(1, words.size()).forEach(target -> right.add(Match.pair(words.get(0), target)));
        }
        rows.forEach(row -> checkOption(fields, "rows", id, row));
        columns.forEach(column -> column.forEach(target -> checkOption(fields, "columns", id, target)));
        for (int column = 1; column <= columns.size(); column++) {
            checkText(fields, "columns", "question." + id + ".column." + column);
        }
        return made(fields, () -> Question.ofMatch(id, false, new Match(rows, columns), right, source));
    }

    /** The mapping itself is built later, with all of its fields read. */
    private static Optional<Question> made(Fields fields, java.util.function.Supplier<Question> maker) {
        if (!fields.isSound()) {
            return Optional.empty();
        }
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException e) {
            fields.fault("This cannot be: " + e.getMessage() + ".");
            return Optional.empty();
        }
    }

    private static void checkKey(Fields fields, QuestionKind kind, List<String> options, List<String> right) {
        if (!options.isEmpty() && options.size() < Question.fewest(kind)) {
            fields.faultAt("options", "A question " + kind.id() + " needs at least " + Question.fewest(kind) + ".");
        }
        for (String option : right) {
            if (!options.contains(option)) {
                fields.faultAt("right", "The key names " + option + ", which is not among the options.");
            }
        }
        if (!right.isEmpty() && !Question.fits(kind, options.size(), right.size())) {
            fields.faultAt(
                    "right",
                    "A key of " + right.size() + " of " + options.size() + " does not fit " + kind.id()
                            + ": choice has 1, several-of at least 1, put-in-order has all.");
        }
    }

    private void checkOption(Fields fields, String name, String id, String option) {
        checkText(fields, name, "question." + id + ".option." + option);
    }

    private void checkText(Fields fields, String name, String key) {
        if (!textKeys.contains(texts + "." + key)) {
            fields.faultAt(name, "There is no text " + texts + "." + key + ".");
        }
    }
}
