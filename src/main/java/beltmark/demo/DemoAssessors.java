package beltmark.demo;

import beltmark.core.setup.HardwareCard;
import beltmark.people.People;
import beltmark.signoff.Appointment;
import beltmark.signoff.Signoff;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.LocalDate;
import java.util.List;

/** Appoints the first assessors of the demo site, as a coordinator must before anybody can hold a qualification. */
public final class DemoAssessors {

    private static final String COORDINATOR = "Hanneke Visser";
    private static final List<String> SUPERVISORS = List.of("Ingrid Solheim", "Samuel Adeyemi", "Farida Rahimi");
    private static final String REASON = "Set up this hardware for years before there were records here.";

    private static final int DAYS_BACK = 14;

    private final People people;
    private final Signoff signoff;
    private final List<HardwareCard> cards;

    /**
     * @param people who there is
     * @param signoff the feature, with the demo's clock
     * @param cards the hardware they are appointed on
     */
    public DemoAssessors(People people, Signoff signoff, List<HardwareCard> cards) {
        this.cards = List.copyOf(cards);
        this.people = people;
        this.signoff = signoff;
    }

    /** Appoints each supervisor on each hardware, from a fortnight ago and for two years. */
    public void play() {
        Visitor coordinator = people.getVisitor(COORDINATOR);
        LocalDate first = signoff.today().minusDays(DAYS_BACK);
        for (String name : SUPERVISORS) {
            Visitor supervisor = people.getVisitor(name);
            for (HardwareCard card : cards) {
                Appointment appointment =
                        new Appointment(name, COORDINATOR, card.id(), first, first.plusYears(2), REASON);
                signoff.assessors()
                        .appoint(coordinator, supervisor.personId(), appointment, OperationId.fresh())
                        .join();
            }
        }
    }
}
