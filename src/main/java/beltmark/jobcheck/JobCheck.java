package beltmark.jobcheck;

import beltmark.content.Content;
import beltmark.core.crew.Candidate;
import beltmark.core.crew.Place;
import beltmark.core.crew.Proposal;
import beltmark.core.qualification.Facts;
import beltmark.core.qualification.Judge;
import beltmark.db.Database;
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
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Answers who could do a job on a day. */
public final class JobCheck {

    private final Database database;
    private final Content content;
    private final Clock clock;
    private final Standings standings;
    private final PeopleStore people = new PeopleStore();

    /**
     * @param database where people and facts are
     * @param content cards and rules
     * @param clock the day and the zone of the site
     */
    public JobCheck(Database database, Content content, Clock clock) {
        this.database = database;
        this.content = content;
        this.clock = clock;
        this.standings = new Standings(content.rules());
    }

    /**
     * The answer.
     *
     * @param people everybody who was looked at, by crew and name
     * @param seats the proposed crew
     */
    public record Answer(List<Checked> people, List<Proposal.Seat> seats) {
        public Answer {
            people = List.copyOf(people);
            seats = List.copyOf(seats);
        }
    }

    /** {@return the crews a visitor may choose from; none for who sees only the own one} */
    List<Crew> listCrews(Visitor visitor) {
        return seesAll(visitor) ? database.read(people::listCrews) : List.of();
    }

    /** {@return who could do the job, among the people whom the visitor may see} */
    public Answer check(Visitor visitor, JobQuery query) {
        long crew = crew(visitor, query);
        List<Checked> checked = database.read(handle -> check(handle, crew, query));
        List<Candidate> candidates =
                checked.stream().filter(Checked::canGo).map(JobCheck::candidate).toList();
        return new Answer(checked, Proposal.seats(query.places(), candidates));
    }

    private List<Checked> check(Handle handle, long crew, JobQuery query) {
        AsOf asOf = query.asOf();
        Instant known = asOf.knownAt(clock.getZone());
        List<Member> members = people.listMembers(handle, crew);
        Map<Long, Facts> facts =
                standings.mapFacts(handle, members.stream().map(Member::id).toList(), asOf.on(), known);
        List<Checked> checked = new ArrayList<>();
        for (Member member : members) {
            checked.add(check(member, facts.getOrDefault(member.id(), Facts.none(member.id())), query, known));
        }
        return checked;
    }

    private Checked check(Member member, Facts facts, JobQuery query, Instant known) {
        AsOf asOf = query.asOf();
        Judge then = new Judge(content.rules(), facts, asOf.on(), known);
        Judge now = new Judge(content.rules(), facts, asOf.today(), known);
        List<Checked.For> stands = new ArrayList<>();
        List<String> lapsing = new ArrayList<>();
        for (Place place : query.places()) {
            String id = place.qualification();
            Checked.For one = new Checked.For(id, then.standing(id));
            stands.add(one);
            boolean ahead = asOf.on().isAfter(asOf.today());
            if (ahead
                    && !one.standing().status().isValid()
                    && now.standing(id).status().isValid()) {
                lapsing.add(id);
            }
        }
        return new Checked(member, stands, lapsing);
    }

    private static Candidate candidate(Checked one) {
        Map<String, LocalDate> lastDays = new HashMap<>();
        for (Checked.For place : one.standings()) {
            if (place.standing().status().isValid()) {
                lastDays.put(
                        place.qualification(), place.standing().findLastDay().orElseThrow());
            }
        }
        return new Candidate(one.member().id(), one.member().name(), lastDays);
    }

    private long crew(Visitor visitor, JobQuery query) {
        if (!seesAll(visitor)) {
            return visitor.crewId();
        }
        if (query.crew().isEmpty()) {
            return PeopleStore.ALL;
        }
        return listCrews(visitor).stream()
                .map(Crew::id)
                .filter(id -> Long.toString(id).equals(query.crew()))
                .findFirst()
                .orElseThrow(() -> new NotFound("no crew"));
    }

    private static boolean seesAll(Visitor visitor) {
        return visitor.has(Role.COORDINATOR);
    }

    /** {@return cards and rules} */
    Content content() {
        return content;
    }

    /** {@return the day at the site} */
    LocalDate today() {
        return LocalDate.now(clock);
    }
}
