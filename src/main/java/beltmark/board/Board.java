package beltmark.board;

import beltmark.content.Content;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.qualification.CleanNeed;
import beltmark.core.qualification.Judge;
import beltmark.core.qualification.QualificationRule;
import beltmark.db.Database;
import beltmark.mastery.Habit;
import beltmark.mastery.Skills;
import beltmark.qualification.AsOf;
import beltmark.qualification.Standings;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** Who may see whose records, and reads them. */
public final class Board {

    /** How many people are shown on one page. */
    static final int PAGE_SIZE = 50;

    private final Database database;
    private final Content content;
    private final Clock clock;
    private final Standings standings;
    private final BoardStore store = new BoardStore();
    private final EvidenceStore evidence = new EvidenceStore();

    /**
     * @param database where the records are
     * @param content families, cards and rules
     * @param clock the time and the zone of the site
     */
    public Board(Database database, Content content, Clock clock) {
        this.database = database;
        this.content = content;
        this.clock = clock;
        this.standings = new Standings(content.rules());
    }

    /** {@return the slips that are a person's habits today} */
    List<Habit> habits(Member member) {
        LocalDate day = LocalDate.now(clock);
        return database.read(handle -> new Skills().habits(handle, member.id(), day));
    }

    /**
     * Some people with their facts.
     *
     * @param people them, by crew and name
     * @param total how many there are on all pages
     * @param page which page it is, from 1
     */
    record Sheet(Map<Member, PersonFacts> people, int total, int page) {

        int pages() {
            return Math.max(1, (total + PAGE_SIZE - 1) / PAGE_SIZE);
        }
    }

    /** {@return whether somebody sees all crews, or only the own one} */
    static boolean seesAll(Visitor visitor) {
        return visitor.has(Role.COORDINATOR) || visitor.has(Role.ADMIN);
    }

    /** {@return the crews a visitor may choose from; none for who sees only the own one} */
    List<Crew> listCrews(Visitor visitor) {
        return seesAll(visitor) ? database.read(store::listCrews) : List.of();
    }

    /**
     * Reads one page of the board.
     *
     * @param visitor who looks; a crew asked for is without effect for who sees only the own one
     * @param query what is asked for
     */
    Sheet sheet(Visitor visitor, BoardQuery query) {
        return database.read(handle -> {
            List<Member> chosen = listChosen(handle, crew(visitor, query), query);
            int pages = Math.max(1, (chosen.size() + PAGE_SIZE - 1) / PAGE_SIZE);
            int page = Math.min(query.page(), pages);
            int from = Math.min((page - 1) * PAGE_SIZE, chosen.size());
            List<Member> shown = chosen.subList(from, Math.min(from + PAGE_SIZE, chosen.size()));
            return new Sheet(mapFacts(handle, shown, query.asOf()), chosen.size(), page);
        });
    }

    /** {@return where everybody stands who was asked for, for a file} */
    Map<Member, Judge> mapJudges(Visitor visitor, BoardQuery query) {
        return database.read(handle ->
                judges(handle, listChosen(handle, crew(visitor, query), query), query.asOf(), standings.mostClean()));
    }

    private static long crew(Visitor visitor, BoardQuery query) {
        return !seesAll(visitor)
                ? visitor.crewId()
                : query.crew().isEmpty() ? BoardStore.ALL : Long.parseLong(query.crew());
    }

    private List<Member> listChosen(Handle handle, long crew, BoardQuery query) {
        List<Member> everybody = store.listMembers(handle, crew);
        if (query.status().isEmpty()) {
            return everybody;
        }
        List<String> qualifications =
                listRules(query).stream().map(QualificationRule::id).toList();
        List<Member> chosen = new ArrayList<>();
        judges(handle, everybody, query.asOf(), standings.mostClean()).forEach((member, judge) -> {
            if (qualifications.stream()
                    .anyMatch(id -> judge.standing(id).status().id().equals(query.status()))) {
                chosen.add(member);
            }
        });
        return chosen;
    }

    /** {@return the rules of the day that are for the card asked for, or for none} */
    List<QualificationRule> listRules(BoardQuery query) {
        return content.rules().listValid(query.asOf().on()).stream()
                .filter(rule -> query.card().isEmpty()
                        || rule.card().isEmpty()
                        || rule.card().get().equals(query.card()))
                .toList();
    }

    private Map<Member, Judge> judges(Handle handle, List<Member> members, AsOf asOf, int mostClean) {
        List<Long> people = members.stream().map(Member::id).toList();
        Map<Long, Judge> judges = standings.judges(handle, people, asOf.on(), asOf.knownAt(clock.getZone()), mostClean);
        Map<Member, Judge> byMember = new LinkedHashMap<>();
        for (Member member : members) {
            Judge judge = judges.get(member.id());
            if (judge != null) {
                byMember.put(member, judge);
            }
        }
        return byMember;
    }

    private Map<Member, PersonFacts> mapFacts(Handle handle, List<Member> members, AsOf asOf) {
        List<Long> people = members.stream().map(Member::id).toList();
        List<String> families =
                content.families().stream().map(ProblemFamily::id).toList();
        Map<Long, Set<String>> begun = store.mapBegun(handle, people, families, upTo(asOf));
        Map<Long, Map<String, LocalDate>> sat = new HashMap<>();
        store.listSat(handle, people, upTo(asOf))
                .forEach(one ->
                        sat.put(one.person(), Map.of(one.quiz(), LocalDate.ofInstant(one.at(), clock.getZone()))));
        Map<Member, PersonFacts> facts = new LinkedHashMap<>();
        judges(handle, members, asOf, CleanNeed.MOST)
                .forEach((member, judge) -> facts.put(
                        member,
                        new PersonFacts(
                                judge,
                                begun.getOrDefault(member.id(), Set.of()),
                                sat.getOrDefault(member.id(), Map.of()))));
        return facts;
    }

    /** What is recorded at once, happens and is known at the same moment: the earlier of the two limits holds. */
    private Instant upTo(AsOf asOf) {
        return asOf.end(clock.getZone());
    }

    /** {@return a person whose records the visitor may see; throws {@link NotFound} for anybody else} */
    Member getMember(Visitor visitor, long person) {
        Member member = database.read(handle -> store.findMember(handle, person))
                .orElseThrow(() -> new NotFound("person " + person));
        boolean own = person == visitor.personId();
        boolean led = visitor.has(Role.SUPERVISOR) && member.crewId() == visitor.crewId();
        if (!own && !led && !seesAll(visitor)) {
            throw new NotFound("person " + person + " for " + visitor.personId());
        }
        return member;
    }

    /** {@return the facts of one person} */
    PersonFacts facts(Member member, AsOf asOf) {
        Map<Member, PersonFacts> facts = database.read(handle -> mapFacts(handle, List.of(member), asOf));
        return facts.values().iterator().next();
    }

    /** {@return a column by the last part of its address; throws {@link NotFound} when the day has none such} */
    Column getColumn(String id, LocalDate on) {
        return Column.all(content, on).stream()
                .filter(column -> column.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotFound("no column"));
    }

    /** {@return the records behind a cell as of a day, the latest first} */
    List<Evidence> listEvidence(Member member, Column column, AsOf asOf) {
        EvidenceStore.Asked asked =
                new EvidenceStore.Asked(member.id(), column.of(), asOf.on(), upTo(asOf), asOf.knownAt(clock.getZone()));
        return database.read(handle -> switch (column.group()) {
            case PRACTICE -> evidence.listPractice(handle, asked);
            case QUIZ -> evidence.listQuiz(handle, asked);
            case PAPER -> evidence.listPapers(handle, asked);
            case DEMONSTRATION -> evidence.listDemonstrations(handle, asked);
            case QUALIFICATION -> {
                QualificationRule rule =
                        content.rules().findValid(column.of(), asOf.on()).orElseThrow();
                yield evidence.listOrders(handle, asked, rule.card().orElse(""), rule.procedures());
            }
        });
    }

    /** {@return what the board is made of} */
    Content content() {
        return content;
    }

    /** {@return the day at the site} */
    LocalDate today() {
        return LocalDate.now(clock);
    }
}
