package beltmark.core.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** As-left measures against the test card, whose figures are common practice without a published source. */
class AsLeftCheckTest {

    private static final HardwareCard CARD = Sample.card();
    private static final Length BLADE = Length.ofMillimetres(1100);
    private static final SpringSetting SETTING =
            SpringSetting.fromChart(CARD, Tip.CARBIDE, BLADE).orElseThrow();

    @ParameterizedTest
    @CsvSource({
        // belt marks left and right, way, mount marks left and right, springs, sleeve showing: all as the card wants
        // them
        "24 in, 24 7/16 in, OVERSLUNG, 28 3/4 in, 29 3/16 in, 3 3/4 in, 1 1/2 in",
        "24 in, 24 7/16 in, UNDERSLUNG, 24 1/2 in, 24 15/16 in, 3 3/4 in, 1 1/2 in",
        "609.6 mm, 600 mm, OVERSLUNG, 730.25 mm, 720.65 mm, 95.25 mm, 38.1 mm",
        "609.6 mm, 600 mm, UNDERSLUNG, 622.3 mm, 612.7 mm, 95.25 mm, 38.1 mm",
        // off by the whole of the tolerance, which still counts
        "24 in, 24 7/16 in, OVERSLUNG, 28 13/16 in, 29 1/8 in, 3 13/16 in, 1 5/8 in",
        "24 in, 24 7/16 in, OVERSLUNG, 28 11/16 in, 29 1/4 in, 3 11/16 in, 1 3/8 in"
    })
    void theFiguresOfTheTradeAreWithin(
            String beltLeft,
            String beltRight,
            Orientation way,
            String left,
            String right,
            String spring,
            String sleeve) {
        AsLeftCheck check = check(new AsLeft(
                way, sides(beltLeft, beltRight), sides(left, right), sides(spring, spring), sides(sleeve, sleeve)));
        assertTrue(check.isWithin(), check::toString);
        assertTrue(check.measures().stream().allMatch(one -> one.findSlip().isEmpty()));
    }

    @ParameterizedTest
    @CsvSource({
        // belt marks 24 and 24 7/16 in, overslung; one measure, what was read, off by, slip
        "mount-mark-left, 28 3/4, 0, ",
        "mount-mark-left, 28 27/32, 3/32, ",
        "mount-mark-left, 24 1/2, -4 1/4, other-orientation",
        "mount-mark-left, 24, -4 3/4, belt-mark-again",
        "mount-mark-left, 19 1/4, -9 1/2, measured-down",
        "mount-mark-left, 29 3/16, 7/16, other-side",
        "mount-mark-left, 29, 1/4, other-tip",
        "mount-mark-right, 28 3/4, -7/16, other-side",
        "mount-mark-right, 28 13/16, -3/8, other-side",
        "mount-mark-right, 29 7/16, 1/4, other-tip",
        "mount-mark-left, 730.25 in, 701 1/2, millimetres-as-inches",
        "mount-mark-left, 28.75 mm, -27.618110236, inches-as-millimetres",
        "spring-left, 3 3/4, 0, ",
        // on this card the neighbouring rows of the chart are one washer away
        "spring-left, 3 5/8, -1/8, washer-left-out",
        "spring-right, 3 7/8, 1/8, washer-added",
        "spring-right, 4, 1/4, other-tip",
        "spring-right, 4 1/2, 3/4, free-length",
        "spring-right, 3.75 mm, -3.602362205, inches-as-millimetres",
        "spring-left, 3 1/4, -1/2, ",
        "sleeve-left, 1 1/2, 0, ",
        "sleeve-right, 1 11/16, 3/16, ",
        "sleeve-right, 38.1 in, 36.6, millimetres-as-inches"
    })
    void tellsHowFarOffAndTheLikelySlip(String id, String read, String offBy, String slip) {
        MeasureCheck one = find(check(asWantedBut(id, length(read))), id);
        double off = offBy.startsWith("-")
                ? -Sample.inches(offBy.substring(1)).inches()
                : Sample.inches(offBy).inches();
        assertEquals(off, one.offBy().inches(), 1e-6);
        assertEquals(slip == null ? "" : slip, one.findSlip().orElse(""));
        assertEquals(off == 0, one.isWithin());
    }

    @Test
    void namesTheWasherWhenTheChartHasNoOtherLengthLikeIt() {
        HardwareCard card = Sample.content().findCard("narrow-belt-rig").orElseThrow();
        SpringSetting setting = SpringSetting.fromChart(card, Tip.CARBIDE, Length.ofMillimetres(500))
                .orElseThrow();
        Length coil = setting.coil();
        AsLeft asLeft = new AsLeft(
                Orientation.OVERSLUNG,
                sides("24", "24"),
                sides("28 1/4", "28 1/4"),
                Sides.both(coil),
                sides("1 1/2", "1"));
        assertEquals(
                "washer-left-out",
                find(AsLeftCheck.of(card, setting, asLeft), "spring-left").slip());
    }

    @Test
    void aSleeveThatFollowsFromMountingHighIsNotBlamedOnTheSleeve() {
        AsLeft high = new AsLeft(
                Orientation.OVERSLUNG,
                sides("24", "24 7/16"),
                sides("29", "29 3/16"),
                sides("3 3/4", "3 3/4"),
                sides("1 1/4", "1 1/2"));
        assertEquals("mounted-off-its-mark", find(check(high), "sleeve-left").slip());
    }

    @ParameterizedTest
    @CsvSource({"0, 999999 mm", "999999 mm, 0", "0, 0", "24, 31", "999999 mm, 999999 mm"})
    void measuresThatCannotBeAreJudgedLikeAnyOthers(String beltMark, String mountMark) {
        AsLeft absurd = new AsLeft(
                Orientation.OVERSLUNG,
                sides(beltMark, beltMark),
                sides(mountMark, mountMark),
                sides("0", "999999 mm"),
                sides("999999 mm", "0"));
        assertFalse(check(absurd).isWithin());
    }

    @ParameterizedTest
    @CsvSource({"3 3/4, 3 3/4, true", "3 3/4, 3 13/16, true", "3 11/16, 3 13/16, false", "3 13/16, 3 11/16, false"})
    void bothSpringsAreSetTheSame(String left, String right, boolean equal) {
        AsLeft asLeft = new AsLeft(
                Orientation.OVERSLUNG,
                sides("24", "24 7/16"),
                sides("28 3/4", "29 3/16"),
                sides(left, right),
                sides("1 1/2", "1 1/2"));
        AsLeftCheck check = check(asLeft);
        assertEquals(equal, check.areSpringsEqual());
        assertEquals(equal, check.isWithin());
        assertTrue(check.measures().stream().allMatch(MeasureCheck::isWithin));
    }

    @Test
    void whatTheCardWantsIsWithinForEveryCardTipBladeAndWay() {
        SplittableRandom random = new SplittableRandom(4);
        for (HardwareCard card : Sample.content().cards()) {
            for (Tip tip : Tip.values()) {
                for (TipCard.Setting row : card.tip(tip).chart()) {
                    for (Orientation way : Orientation.values()) {
                        SpringSetting setting =
                                SpringSetting.fromChart(card, tip, row.blade()).orElseThrow();
                        AsLeft asLeft = asWanted(card, setting, way, random);
                        assertTrue(AsLeftCheck.of(card, setting, asLeft).isWithin());
                    }
                }
            }
        }
    }

    @Test
    void everySlipThatStandsAloneIsNamedAndNoneWithinTolerance() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 2_000; i++) {
            Orientation way = random.nextBoolean() ? Orientation.OVERSLUNG : Orientation.UNDERSLUNG;
            AsLeft wanted = asWanted(CARD, SETTING, way, random);
            List<Slip> slips = MountMarkSlips.of(CARD, Tip.CARBIDE, way, wanted.beltMarks(), Side.LEFT);
            Slip slip = slips.get(random.nextInt(slips.size()));
            Sides marks = new Sides(slip.value(), wanted.mountMarks().right());
            MeasureCheck left = check(new AsLeft(way, wanted.beltMarks(), marks, wanted.springs(), wanted.sleeves()))
                    .measures()
                    .get(0);
            boolean alone = Slip.behind(slips, slip.value(), left.tolerance()).isPresent();
            assertEquals(!left.isWithin() && alone, slip.id().equals(left.slip()), left::toString);
        }
    }

    @Test
    void offByAndToleranceAgreeForAnyMeasure() {
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 2_000; i++) {
            Length read = Length.ofNanometres(random.nextLong(0, 200_000_000));
            MeasureCheck one = find(check(asWantedBut("spring-right", read)), "spring-right");
            assertEquals(read, one.wanted().plus(one.offBy()));
            assertEquals(one.isWithin(), one.beyondTolerance().equals(Length.ZERO));
            assertFalse(one.isWithin() && one.findSlip().isPresent());
        }
    }

    private static AsLeft asWanted(HardwareCard card, SpringSetting setting, Orientation way, RandomGenerator random) {
        Sides beltMarks = new Sides(sixteenths(random, 320, 544), sixteenths(random, 320, 544));
        return new AsLeft(
                way,
                beltMarks,
                new MountMarks(beltMarks, card.mountOffset(setting.tip(), way)).heights(),
                Sides.both(setting.springLength()),
                Sides.both(card.sleeve()));
    }

    private static Length sixteenths(RandomGenerator random, int from, int to) {
        return Length.ofSixteenths(random.nextInt(from, to));
    }

    private static AsLeft asWantedBut(String id, Length read) {
        return new AsLeft(
                Orientation.OVERSLUNG,
                sides("24", "24 7/16"),
                but("mount-mark", id, sides("28 3/4", "29 3/16"), read),
                but("spring", id, sides("3 3/4", "3 3/4"), read),
                but("sleeve", id, sides("1 1/2", "1 1/2"), read));
    }

    private static Sides but(String measure, String id, Sides wanted, Length read) {
        return new Sides(
                id.equals(measure + "-left") ? read : wanted.left(),
                id.equals(measure + "-right") ? read : wanted.right());
    }

    private static AsLeftCheck check(AsLeft asLeft) {
        return AsLeftCheck.of(CARD, SETTING, asLeft);
    }

    private static MeasureCheck find(AsLeftCheck check, String id) {
        return check.measures().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Sides sides(String left, String right) {
        return new Sides(length(left), length(right));
    }

    private static Length length(String read) {
        return Sample.inches(read);
    }
}
