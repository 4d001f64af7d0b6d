package beltmark.core.sheet;

import beltmark.Sample;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.setup.Tip;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Speed;
import java.util.List;
import java.util.Random;

/** An ordinary installation of the test card, changed in one thing or another; lengths as typed by an inch person. */
final class Plain {

    private static final Tip TIP = Tip.CARBIDE;

    private HardwareCard card = Sample.card();
    private Sides marks = new Sides(Sample.inches("38"), Sample.inches("38 1/2"));
    private Length blade = Sample.inches("1100 mm");
    private Length roof = Sample.inches("20");
    private Length floor = Sample.inches("20");
    private Length mountedHigh = Length.ZERO;
    private Length splice = Sample.inches("10 mm");
    private Length belt = Sample.inches("1120 mm");
    private Length inside = Sample.inches("1400 mm");
    private Length mistracking = Length.ZERO;
    private double slope;

    Plain blade(String typed) {
        blade = Sample.inches(typed);
        belt = blade.plus(Length.ofMillimetres(20));
        return this;
    }

    Plain belt(String typed) {
        belt = Sample.inches(typed);
        return this;
    }

    Plain inside(String typed) {
        inside = Sample.inches(typed);
        return this;
    }

    Plain roof(String typed) {
        roof = Sample.inches(typed);
        return this;
    }

    Plain floor(String typed) {
        floor = Sample.inches(typed);
        return this;
    }

    Plain mountedHigh(String typed) {
        mountedHigh = Sample.inches(typed);
        return this;
    }

    Plain splice(String typed) {
        splice = Sample.inches(typed);
        return this;
    }

    Plain mistracking(String typed) {
        mistracking = Sample.inches(typed);
        return this;
    }

    Plain marks(Sides sides) {
        marks = sides;
        return this;
    }

    Plain slope(double degrees) {
        slope = degrees;
        return this;
    }

    /** {@return this with every number drawn anew, possible or not} */
    Plain shuffled(Random random) {
        blade = millimetres(random, 3000);
        belt = millimetres(random, 3000);
        inside = millimetres(random, 3500);
        roof = millimetres(random, 900);
        floor = millimetres(random, 900);
        mountedHigh = millimetres(random, 100).minus(Length.ofMillimetres(50));
        splice = millimetres(random, 100);
        mistracking = millimetres(random, 100);
        marks = new Sides(millimetres(random, 2000), millimetres(random, 2000));
        slope = random.nextInt(100);
        card = Sample.content().cards().get(random.nextInt(3));
        return this;
    }

    private static Length millimetres(Random random, int most) {
        return Length.ofMillimetres(random.nextInt(most + 1));
    }

    Installation build() {
        Situation situation = new Situation(
                card,
                TIP,
                blade,
                marks,
                new Surroundings(floor.negated(), roof, List.<Reach>of()),
                mountedHigh,
                splice);
        return new Installation(
                situation,
                Angle.ofDegrees(slope),
                belt,
                inside,
                Sample.inches("1500 mm"),
                mistracking,
                Speed.ofMetresPerSecond(2.5));
    }
}
