package beltmark.expiry;

import beltmark.content.Content;
import beltmark.core.qualification.Judge;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Standing;
import beltmark.db.Database;
import beltmark.qualification.AsOf;
import beltmark.qualification.Standings;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.RandomToken;
import beltmark.web.Role;
import beltmark.web.Visitor;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** What runs out in a crew, and who may fetch it as a calendar. */
public final class Expiry {

    /** How many days ahead the list looks. */
    static final int DAYS = 60;

    private static final int TOKEN_BYTES = 32;
    private static final Comparator<Ending> BY_DAY = Comparator.comparing(Ending::lastDay)
            .thenComparing(ending -> ending.member().name())
            .thenComparing(ending -> ending.member().id());

    private final Database database;
    private final RecordBook book;
    private final Content content;
    private final Clock clock;
    private final Standings standings;
    private final ExpiryStore store = new ExpiryStore();

    /**
     * @param database where facts and calendars are
     * @param book where it is recorded that one was made or revoked
     * @param content the rules
     * @param clock the time and the zone of the site
     */
    public Expiry(Database database, RecordBook book, Content content, Clock clock) {
        this.database = database;
        this.book = book;
        this.content = content;
        this.clock = clock;
        this.standings = new Standings(content.rules());
    }

    /** {@return the crews a visitor sees: all for the coordinator, else the own one} */
    List<Crew> listCrews(Visitor visitor) {
        return database.read(store::listCrews).stream()
                .filter(crew -> visitor.has(Role.COORDINATOR) || crew.id() == visitor.crewId())
                .toList();
    }

    /** {@return a crew of an address that the visitor may see; empty for all of them, or the own one} */
    Optional<Crew> findCrew(Visitor visitor, String asked) {
        List<Crew> crews = listCrews(visitor);
        if (asked.isEmpty() || !visitor.has(Role.COORDINATOR)) {
            return crews.size() == 1 ? Optional.of(crews.get(0)) : Optional.empty();
        }
        return Optional.of(crews.stream()
                .filter(crew -> Long.toString(crew.id()).equals(asked))
                .findFirst()
                .orElseThrow(() -> new NotFound("no crew")));
    }

    /** {@return what runs out within the next {@link #DAYS} days in a crew, or in all, the earliest first} */
    List<Ending> listNext(Optional<Crew> crew) {
        LocalDate last = today().plusDays(DAYS);
        return listEndings(crew.map(Crew::id).orElse(ExpiryStore.ALL)).stream()
                .filter(ending -> !ending.lastDay().isAfter(last))
                .toList();
    }

    private List<Ending> listEndings(long crew) {
        return database.read(handle -> listEndings(handle, crew));
    }

    private List<Ending> listEndings(Handle handle, long crew) {
        List<Member> members = store.listMembers(handle, crew);
        List<Long> people = members.stream().map(Member::id).toList();
        Map<Long, Judge> judges = standings.judges(handle, people, today(), AsOf.EVERYTHING, standings.mostClean());
        List<Ending> endings = new ArrayList<>();
        for (Member member : members) {
            Optional.ofNullable(judges.get(member.id()))
                    .ifPresent(judge -> content.rules().listValid(today()).stream()
                            .flatMap(rule -> ending(member, rule, judge).stream())
                            .forEach(endings::add));
        }
        endings.sort(BY_DAY);
        return endings;
    }

    private static Optional<Ending> ending(Member member, QualificationRule rule, Judge judge) {
        Standing standing = judge.standing(rule.id());
        return standing.status().isValid()
                ? standing.findLastDayWithoutWork().map(day -> new Ending(member, rule.id(), day, standing))
                : Optional.empty();
    }

    /** {@return the calendars of the visitor's crew} */
    List<Feed> listFeeds(Visitor visitor) {
        return database.read(handle -> store.listFeeds(handle, visitor.crewId()));
    }

    /** {@return the token of a new calendar of the visitor's crew; empty when the form was sent before} */
    CompletableFuture<Optional<String>> makeFeed(Visitor visitor, OperationId operation) {
        return database.write(handle -> {
            if (book.isRecorded(handle, operation.value())) {
                return Optional.empty();
            }
            String token = RandomToken.ofBytes(TOKEN_BYTES);
            long feed = store.addFeed(
                    handle,
                    visitor.crewId(),
                    hash(token),
                    visitor.language().tag(),
                    visitor.personId(),
                    clock.instant());
            record(handle, "expiry.feed", visitor, operation, feed);
            return Optional.of(token);
        });
    }

    /** Revokes a calendar of the visitor's crew; without effect on one that is revoked already. */
    CompletableFuture<Boolean> revokeFeed(Visitor visitor, long feed, OperationId operation) {
        return database.write(handle -> {
            boolean own = store.listFeeds(handle, visitor.crewId()).stream().anyMatch(one -> one.id() == feed);
            if (own) {
                store.revokeFeed(handle, feed, clock.instant());
                record(handle, "expiry.revoked", visitor, operation, feed);
            }
            return own;
        });
    }

    private void record(Handle handle, String kind, Visitor visitor, OperationId operation, long feed) {
        FeedRecord body = new FeedRecord(feed, visitor.crewId());
        long person = visitor.personId();
        book.append(handle, new Entry(kind, operation.value(), person, person, clock.instant(), body));
    }

    /** {@return the calendar of a token, if it is one that was not revoked} */
    Optional<Feed> findFeed(String token) {
        return database.read(handle -> store.findFeed(handle, hash(token)));
    }

    /** {@return everything that will run out in the crew of a calendar} */
    List<Ending> listEndings(Feed feed) {
        return listEndings(feed.crewId());
    }

    private static byte[] hash(String token) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return the day at the site} */
    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** {@return the present moment} */
    Instant now() {
        return clock.instant();
    }
}
