package beltmark.board;

import beltmark.content.Content;
import beltmark.db.Database;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** Who may see whose records, and reads them. */
public final class Board {

    private final Database database;
    private final Content content;
    private final Clock clock;
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
    }

    /**
     * People with their facts.
     *
     * @param members by crew and name
     * @param facts by person; nobody without any is among them
     */
    record Sheet(List<Member> members, Map<Long, PersonFacts> facts) {

        PersonFacts factsOf(Member member) {
            return facts.getOrDefault(member.id(), PersonFacts.of(member.id()));
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
     * Reads the board.
     *
     * @param visitor who looks
     * @param crew the crew chosen, or {@link BoardStore#ALL}; without effect for who sees only the own one
     * @return everybody the visitor may see
     */
    Sheet sheet(Visitor visitor, long crew) {
        long shown = seesAll(visitor) ? crew : visitor.crewId();
        return database.read(handle -> new Sheet(
                store.listMembers(handle, shown), store.mapFacts(handle, shown, BoardStore.ALL, clock.getZone())));
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
    PersonFacts facts(Member member) {
        return database.read(handle -> store.mapFacts(handle, BoardStore.ALL, member.id(), clock.getZone()))
                .getOrDefault(member.id(), PersonFacts.of(member.id()));
    }

    /** {@return a column by the last part of its address; throws {@link NotFound} when there is none} */
    Column getColumn(String id) {
        return Column.all(content).stream()
                .filter(column -> column.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotFound("no column"));
    }

    /** {@return the records behind a cell, the latest first} */
    List<Evidence> listEvidence(Member member, Column column) {
        return database.read(handle -> switch (column.group()) {
            case PRACTICE -> evidence.listPractice(handle, member.id(), column.of());
            case QUIZ -> evidence.listQuiz(handle, member.id(), column.of());
            case DEMONSTRATION -> evidence.listDemonstrations(handle, member.id(), column.of());
            case QUALIFICATION -> List.of();
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
