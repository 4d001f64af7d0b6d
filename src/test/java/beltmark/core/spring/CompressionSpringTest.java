package beltmark.core.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class CompressionSpringTest {

    private static CompressionSpring spring(double wire, double coil, double active, double free) {
        return new CompressionSpring(
                Length.ofMillimetres(wire),
                Length.ofMillimetres(coil),
                active,
                SpringEnds.SQUARED_GROUND,
                Length.ofMillimetres(free),
                77_200);
    }

    @Test
    void givesRateIndexAndSolidLengthOfTheDemoSpring() {
        CompressionSpring spring = spring(6, 50, 5, 114.3);
        assertEquals(20.010, spring.rate().newtonsPerMillimetre(), 0.0005);
        assertEquals(114.3, spring.rate().poundsForcePerInch(), 0.05);
        assertEquals(50 / 6.0, spring.index(), 1e-12);
        assertEquals(Length.ofMillimetres(42), spring.solidLength());
    }

    @Test
    void namesWhatIsImpossible() {
        assertEquals(List.of(), spring(6, 50, 5, 114.3).refusals());
        assertEquals(
                List.of(Refusal.COIL_NOT_LARGER_THAN_WIRE),
                spring(6, 6, 5, 114.3).refusals());
        assertEquals(
                List.of(Refusal.NO_ACTIVE_COILS),
                spring(6, 50, Double.NaN, 114.3).refusals());
        assertEquals(List.of(Refusal.FREE_NOT_ABOVE_SOLID), spring(6, 50, 5, 42).refusals());
        assertEquals(List.of(Refusal.OUT_OF_RANGE), spring(0, 50, 5, 114.3).refusals());
    }

    @Test
    void refusesToBeLooseOrBeyondSolid() {
        CompressionSpring spring = spring(6, 50, 5, 114.3);
        assertEquals(Refusal.SPRING_LOOSE, refusal(spring, 114.31));
        assertEquals(Refusal.COIL_BIND, refusal(spring, 41.99));
        assertEquals(0, spring.forceAt(Length.ofMillimetres(114.3)).newtons());
    }

    private static Refusal refusal(CompressionSpring spring, double coil) {
        return assertThrows(Refused.class, () -> spring.forceAt(Length.ofMillimetres(coil)))
                .refusal();
    }
}
