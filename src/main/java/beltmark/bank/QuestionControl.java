package beltmark.bank;

import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Source;
import beltmark.core.lockout.Switches;
import beltmark.db.Database;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.web.NotFound;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** What the coordinator does with the question bank: choose rule sets, confirm sources, retire questions. */
public final class QuestionControl {

    /** The rule sets a site can work under. */
    static final List<String> RULE_SETS = List.of("osha-gi", "osha-constr", "msha-mnm", "msha-coal", "site");

    private static final String RULES_CHOSEN = "lockout.rules-chosen";

    private final Database database;
    private final RecordBook book;
    private final Papers papers;
    private final Clock clock;
    private final BankStore store = new BankStore();

    /**
     * @param database where the settings are kept
     * @param book where they are recorded
     * @param papers the bank
     * @param clock the time
     */
    public QuestionControl(Database database, RecordBook book, Papers papers, Clock clock) {
        this.database = database;
        this.book = book;
        this.papers = papers;
        this.clock = clock;
    }

    /** {@return every question, in the order of the files} */
    List<BankQuestion> listQuestions() {
        return papers.bank().questions();
    }

    /** {@return the question of an id} */
    BankQuestion getQuestion(String id) {
        return papers.bank().find(id).orElseThrow(() -> new NotFound("question " + id));
    }

    /** {@return the rule sets the site works under} */
    List<String> ruleSets() {
        return database.read(store::findRuleSets).orElse(papers.ruleSets());
    }

    /** {@return what is set for single questions} */
    Switches switches() {
        return database.read(store::getSwitches);
    }

    /** {@return what was set for a question, the last setting first} */
    List<SetAt> listSettings(String question) {
        return database.read(handle -> store.listSettings(handle, question));
    }

    /** Chooses the rule sets; a choice of none, or of one that does not exist, is not taken. */
    CompletableFuture<Boolean> chooseRules(long person, List<String> chosen, String operation) {
        List<String> ruleSets = RULE_SETS.stream().filter(chosen::contains).toList();
        if (ruleSets.isEmpty() || !RULE_SETS.containsAll(chosen)) {
            return CompletableFuture.completedFuture(false);
        }
        return database.write(handle -> {
            Instant now = clock.instant();
            Entry entry = new Entry(RULES_CHOSEN, operation, person, person, now, new RulesChosen(ruleSets));
            Recorded recorded = book.append(handle, entry);
            if (recorded.isNew()) {
                store.addRules(handle, recorded.sequence(), ruleSets, person, now);
            }
            return true;
        });
    }

    /** Sets a switch of a question or takes it back; setting it twice makes one record. */
    CompletableFuture<Boolean> set(long person, String id, Switch which, boolean on, String operation) {
        Source source = getQuestion(id).question().source();
        return database.write(handle -> {
            if (isOn(store.getSwitches(handle), which, id) == on) {
                return false;
            }
            Instant now = clock.instant();
            SwitchSet body = new SwitchSet(id, on, source.mark().id(), source.paragraph());
            Recorded recorded = book.append(handle, new Entry(which.record(), operation, person, person, now, body));
            if (recorded.isNew()) {
                store.addSwitch(handle, recorded.sequence(), id, which, on, person, now);
            }
            return recorded.isNew();
        });
    }

    /** {@return whether a switch is on} */
    static boolean isOn(Switches switches, Switch which, String question) {
        return switch (which) {
            case CONFIRMED -> switches.confirmed().contains(question);
            case RETIRED -> switches.retired().contains(question);
        };
    }
}
