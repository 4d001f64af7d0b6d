package beltmark.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.db.Database;
import beltmark.web.TooBusy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@SuppressWarnings("NullAway.Init")
class PinsTest {

    private static final byte[] PEPPER = "0123456789abcdef0123456789abcdef".getBytes(StandardCharsets.US_ASCII);
    private static final String PIN = "407182";

    @TempDir
    private Path folder;

    private Database database;
    private Pins pins;
    private long person;

    @BeforeEach
    void open() {
        database = Database.open(folder);
        pins = new Pins(database, PEPPER);
        DemoPeople.read().addTo(database, pins);
        person = 2;
    }

    @AfterEach
    void close() {
        pins.close();
        database.close();
    }

    private int tries() {
        return database.read(handle -> new PinStore().countTries(handle, person));
    }

    @Test
    void neverCountsMoreThanTenOfManyGuessesAtOnce() {
        List<CompletableFuture<Boolean>> guesses = IntStream.range(0, 64)
                .parallel()
                .mapToObj(i -> guess(String.format("%06d", i)))
                .toList();
        assertTrue(guesses.stream().noneMatch(CompletableFuture::join));
        assertTrue(tries() <= 10, tries() + " tries");
        List<CompletableFuture<Boolean>> more =
                IntStream.range(0, 12).mapToObj(i -> guess("000000")).toList();
        more.forEach(CompletableFuture::join);
        assertEquals(10, tries());
        assertFalse(pins.confirmPin(person, PIN).join());
    }

    /** Those beyond the queue are refused before a try is taken. */
    private CompletableFuture<Boolean> guess(String pin) {
        try {
            return pins.confirmPin(person, pin);
        } catch (TooBusy e) {
            return CompletableFuture.completedFuture(false);
        }
    }

    @Test
    void givesTheTriesBackForTheRightPin() {
        for (int i = 0; i < 9; i++) {
            assertFalse(pins.confirmPin(person, "000000").join());
        }
        assertEquals(9, tries());
        assertTrue(pins.confirmPin(person, PIN).join());
        assertEquals(0, tries());
    }

    @Test
    void keepsTheCountOverARestart() {
        for (int i = 0; i < 10; i++) {
            pins.confirmPin(person, "000000").join();
        }
        close();
        database = Database.open(folder);
        pins = new Pins(database, PEPPER);
        assertFalse(pins.confirmPin(person, PIN).join());
    }

    @Test
    void answersForNobodyAsForAWrongPin() {
        assertEquals(Pins.Answer.WRONG, pins.check(999, PIN).join().answer());
        assertEquals(Pins.Answer.WRONG, pins.check(person, "000000").join().answer());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "40718", "4071822", "40718x"})
    void takesNoTryForWhatIsNotSixDigits(String typed) {
        assertEquals(
                Pins.Answer.NOT_SIX_DIGITS, pins.check(person, typed).join().answer());
        assertEquals(0, tries());
    }

    @Test
    void aResetAfterThePinWasComparedLeavesNoSessionAndNoOtherPin() {
        PersonSessions sessions = new PersonSessions(database, Clock.systemUTC());
        SignIn signIn = new SignIn(database, pins, sessions);
        Pins.Compared compared = pins.check(person, PIN).join();
        PinStore.StoredPin reset = pins.hash("830617", true).join();
        PinStore.StoredPin chosen = pins.hash("950264", false).join();
        List<Pins.Answer> answers = database.write(handle -> {
                    new PinStore().set(handle, person, reset);
                    return List.of(
                            signIn.startSession(handle, person, compared, "").answer(),
                            signIn.storePin(handle, person, compared, chosen, "")
                                    .answer());
                })
                .join();
        assertEquals(List.of(Pins.Answer.WRONG, Pins.Answer.WRONG), answers);
        assertEquals(
                Pins.Answer.MUST_CHANGE, pins.check(person, "830617").join().answer());
        long sessionsLeft = database.read(handle -> handle.createQuery("SELECT count(*) FROM people_session")
                .mapTo(Long.class)
                .one());
        assertEquals(0, sessionsLeft);
    }

    @Test
    void needsThePepper() {
        String hash = new PinHash(PEPPER).hash(PIN);
        assertTrue(new PinHash(PEPPER).matches(PIN, hash));
        assertFalse(new PinHash("another pepper".getBytes(StandardCharsets.US_ASCII)).matches(PIN, hash));
    }

    @Test
    void saltsEachHash() {
        PinHash hasher = new PinHash(PEPPER);
        assertNotEquals(hasher.hash(PIN), hasher.hash(PIN));
        assertTrue(hasher.hash(PIN).startsWith("$argon2id$v=19$m=19456,t=2,p=1,keyid="));
    }

    /** Expected value computed with the reference program, argon2 0~20171227: see the command in the message. */
    @Test
    void hashesAsTheReferenceProgramDoes() {
        byte[] hash = PinHash.argon2("407182", "sixteenbytesalt!".getBytes(StandardCharsets.US_ASCII), 19_456, 2, 1);
        assertEquals(
                "3f862a2bc94a24376dc520c1490acdc780423acb1f1d805a9a6fed98926d8863",
                HexFormat.of().formatHex(hash),
                "echo -n 407182 | argon2 'sixteenbytesalt!' -id -t 2 -k 19456 -p 1 -l 32 -r");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "111111", "123456", "654321", "246802", "121212", "407407", "112211", "198504", "041999", "052026"
            })
    void refusesPinsThatAnybodyWouldTry(String pin) {
        boolean easy = PinRules.isEasy(pin);
        assertEquals(!pin.equals("246802"), easy, pin);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12345", "1234567", "12a456", "１２３４５６", "40 182"})
    void refusesWhatIsNotSixDigits(String pin) {
        assertEquals(Optional.of(PinRules.PinFault.NOT_SIX_DIGITS), PinRules.findFault("407182", pin, pin));
    }

    @Test
    void drawsPinsThatMayBeChosen() {
        List<String> drawn = new ArrayList<>();
        for (int i = 0; i < 1_000; i++) {
            String pin = PinRules.random();
            assertEquals(Optional.empty(), PinRules.findFault("", pin, pin));
            drawn.add(pin);
        }
        assertTrue(drawn.stream().distinct().count() > 990);
    }
}
