package beltmark.demo;

import beltmark.core.finish.BounceResult;
import beltmark.core.finish.Finish;
import beltmark.core.finish.FinishLimits;
import beltmark.core.setup.AsLeft;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Sides;
import beltmark.core.setup.SpringSetting;
import beltmark.core.setup.TipCard;
import beltmark.core.units.Length;
import beltmark.demo.DemoYear.Shown;
import beltmark.people.People;
import beltmark.signoff.Demonstration;
import beltmark.signoff.EndMeasures;
import beltmark.signoff.Meaning;
import beltmark.signoff.Rig;
import beltmark.signoff.Signoff;
import beltmark.signoff.Watched;
import beltmark.texts.Words;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.LocalDate;
import java.util.Map;

/** Signs off demonstrations as somebody did; every measure was on its mark. */
public final class DemoDemonstrations {

    private static final Sides BELT_MARKS =
            new Sides(Length.ofSixteenths(24 * 16 + 5), Length.ofSixteenths(24 * 16 + 9));

    private static final Length SPLICE = Length.ofSixteenths(6);

    private final People people;
    private final Signoff signoff;
    private final Words words;
    private final String pin;

    /**
     * @param people who there is
     * @param signoff the feature, with the demo's clock
     * @param words the language the signature is in
     * @param pin the PIN of every demo person
     */
    public DemoDemonstrations(People people, Signoff signoff, Words words, String pin) {
        this.people = people;
        this.signoff = signoff;
        this.words = words;
        this.pin = pin;
    }

    void play(Shown shown) {
        Visitor supervisor = people.getVisitor(shown.by());
        Visitor fitter = people.getVisitor(shown.who());
        LocalDate on = signoff.today();
        Rig rig = signoff.getRig(shown.card(), shown.tip());
        Demonstration demonstration = demonstration(rig, shown.conveyor(), on);
        Meaning meaning = Meaning.of(words, supervisor.name(), fitter.name(), demonstration);
        Signoff.Signature signature = new Signoff.Signature(pin, meaning, OperationId.fresh(), null);
        signoff.sign(supervisor, fitter.personId(), demonstration, signature)
                .join()
                .requireStored();
    }

    private Demonstration demonstration(Rig rig, String conveyor, LocalDate on) {
        TipCard.Setting row = rig.card().tip(rig.tip()).chart().get(0);
        SpringSetting setting =
                SpringSetting.fromChart(rig.card(), rig.tip(), row.blade()).orElseThrow();
        Length offset = rig.card().mountOffset(rig.tip(), Orientation.OVERSLUNG);
        AsLeft asLeft = new AsLeft(
                Orientation.OVERSLUNG,
                BELT_MARKS,
                new MountMarks(BELT_MARKS, offset).heights(),
                Sides.both(setting.springLength()),
                Sides.both(rig.card().sleeve()));
        FinishLimits limits = signoff.checklist().limits();
        Finish finish =
                new Finish(Sides.both(Length.ofSixteenths(4 * 16)), limits.bladeAngle(), BounceResult.EVEN, SPLICE);
        return new Demonstration(
                rig,
                new Demonstration.Place(conveyor, on, null),
                Watched.allSeen(signoff.checklist()),
                new EndMeasures(setting, asLeft, finish),
                Map.of(),
                false,
                Map.of());
    }
}
