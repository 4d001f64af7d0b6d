package beltmark.demo;

import beltmark.demo.DemoYear.Event;
import beltmark.demo.DemoYear.Happened;
import beltmark.demo.DemoYear.Practised;
import beltmark.demo.DemoYear.Sat;
import beltmark.demo.DemoYear.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Does the past year again, the longest ago first.
 *
 * @param clock the clock that the features below read
 * @param practice works problems
 * @param quiz sits the lockout quiz
 * @param assessors appoints them, before anything else
 * @param demonstrations signs
 * @param events puts events on record
 */
public record DemoYearPlayer(
        DemoClock clock,
        DemoPractice practice,
        DemoQuiz quiz,
        DemoAssessors assessors,
        DemoDemonstrations demonstrations,
        DemoEvents events) {

    private static final int DAYS_BEFORE_ALL = 420;

    /** Plays the whole year; takes a second or two. */
    public void play(DemoYear year) {
        List<Event> all = new ArrayList<>();
        Stream.of(year.practice(), year.lockout(), year.demonstrations(), year.events())
                .forEach(all::addAll);
        clock.setDaysAgo(DAYS_BEFORE_ALL);
        assessors.play();
        all.sort(Comparator.comparingInt(Event::daysAgo).reversed());
        all.forEach(this::play);
    }

    private void play(Event event) {
        clock.setDaysAgo(event.daysAgo());
        if (event instanceof Practised practised) {
            practice.play(practised);
        } else if (event instanceof Sat sat) {
            quiz.play(sat);
        } else if (event instanceof Happened happened) {
            events.play(happened);
        } else {
            demonstrations.play((Shown) event);
        }
    }
}
