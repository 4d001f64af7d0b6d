package beltmark.web;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import beltmark.MovingClock;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class AddressLimitTest {

    private final MovingClock clock = new MovingClock();
    private final AddressLimit limit = new AddressLimit(clock, 3, Duration.ofMinutes(1));

    private void take(int times) {
        for (int i = 0; i < times; i++) {
            limit.take("a");
        }
    }

    @Test
    void refusesOneMoreThanThereAre() {
        take(3);
        assertThrows(TooBusy.class, () -> limit.take("a"));
        assertDoesNotThrow(() -> limit.take("b"));
    }

    @Test
    void forgetsEachTryAfterItsTime() {
        take(2);
        clock.move(Duration.ofSeconds(30));
        take(1);
        clock.move(Duration.ofSeconds(30));
        take(2);
        assertThrows(TooBusy.class, () -> limit.take("a"));
    }

    @Test
    void givesBackWhatDidNoHarm() {
        take(3);
        limit.giveBack("a");
        assertDoesNotThrow(() -> limit.take("a"));
        assertThrows(TooBusy.class, () -> limit.take("a"));
    }

    @Test
    void keepsNobodyOutWhenTheClockIsSetBack() {
        take(3);
        clock.move(Duration.ofHours(-1));
        assertDoesNotThrow(() -> limit.take("a"));
    }

    @Test
    void forgetsTheLongestIdleAddressOfVeryMany() {
        take(3);
        for (int i = 0; i < 10_000; i++) {
            limit.take("other " + i);
        }
        assertDoesNotThrow(() -> limit.take("a"));
    }
}
