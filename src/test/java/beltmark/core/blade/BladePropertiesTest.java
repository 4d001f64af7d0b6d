package beltmark.core.blade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.core.refusal.Refused;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Angle;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.SpringRate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What must hold for every set-up, tried on many seeded ones. */
class BladePropertiesTest {

    private static final int TRIES = 20_000;

    private final SplittableRandom random = new SplittableRandom(20260103);
    private int possible;

    @BeforeEach
    void startCounting() {
        possible = 0;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private Length length(double low, double high) {
        return Length.ofMillimetres(between(low, high));
    }

    private WorkingSpring spring() {
        return new WorkingSpring(new SpringRate(between(10, 45)), length(100, 125), length(30, 55));
    }

    private Assembly assembly() {
        return new Assembly(new Mass(between(15, 60)), new Angle(between(-18, 18)), length(400, 2400));
    }

    @Test
    void loadOfTheSettingIsTheLoadThatWasWanted() {
        for (int i = 0; i < TRIES; i++) {
            WorkingSpring spring = spring();
            Assembly assembly = assembly();
            Length washer = length(0, 5);
            double wanted = between(0.3, 0.8);
            try {
                Length set = SettingForLoad.of(new LineLoad(wanted), spring, washer, assembly)
                        .result()
                        .measured();
                BladeLoad load = BladeLoad.square(spring, new SpringLengths(set, set, washer), assembly)
                        .result();
                assertEquals(wanted, load.lineLoad().newtonsPerMillimetre(), 1e-6);
                possible++;
            } catch (Refused refused) {
                assertEquals("COIL_BIND", refused.refusal().name());
            }
        }
        assertEquals(true, possible > TRIES / 10);
    }

    @Test
    void mirroringTheSidesMirrorsTheEnds() {
        for (int i = 0; i < TRIES; i++) {
            Length span = length(1000, 2800);
            Length blade = length(400, 900);
            Length off = length(-40, 40);
            Length gravity = length(-40, 40);
            Force left = new Force(between(200, 900));
            Force right = new Force(between(200, 900));
            Force weight = new Force(between(0, 350));
            EdgeLoads.Layout layout = new EdgeLoads.Layout(span, blade, off, gravity);
            EdgeLoads.Layout mirrored = new EdgeLoads.Layout(span, blade, off.negated(), gravity.negated());
            try {
                EdgeLoads ends =
                        EdgeLoads.fromSprings(left, right, weight, layout).result();
                EdgeLoads other =
                        EdgeLoads.fromSprings(right, left, weight, mirrored).result();
                assertEquals(ends.left().amount(), other.right().amount(), 1e-9);
                assertEquals(ends.right().amount(), other.left().amount(), 1e-9);
                possible++;
            } catch (Refused refused) {
                assertEquals("TIPS_OVER", refused.refusal().name());
            }
        }
        assertEquals(true, possible > TRIES / 10);
    }

    @Test
    void evenSpringsGiveEvenEnds() {
        for (int i = 0; i < TRIES; i++) {
            Length span = length(1500, 2800);
            Length blade = length(400, 1200);
            Length off = length(-100, 100);
            Force load = new Force(between(100, 1200));
            Force weight = new Force(between(0, 600));
            EvenSprings springs = EvenSprings.of(load, weight, span, blade, off).result();
            EdgeLoads ends = EdgeLoads.fromSprings(
                            springs.left(),
                            springs.right(),
                            weight,
                            new EdgeLoads.Layout(span, blade, off, Length.ZERO))
                    .result();
            assertEquals(ends.left().amount(), ends.right().amount(), 1e-9);
        }
    }
}
