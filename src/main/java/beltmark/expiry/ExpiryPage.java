package beltmark.expiry;

import beltmark.qualification.StandingWords;
import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.Role;
import beltmark.web.View;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What runs out in the next 60 days, and the calendars of the own crew.
 *
 * @param view what all pages share
 * @param crews the crews to choose from
 * @param crew the crew chosen, empty for all
 * @param today the day it is of
 * @param endings what runs out, the earliest first
 * @param feeds the calendars of the own crew
 * @param address the address of the calendar just made, shown this once; empty when none was
 * @param operation names the forms
 */
public record ExpiryPage(
        View view,
        List<Crew> crews,
        Optional<Crew> crew,
        LocalDate today,
        List<Ending> endings,
        List<Feed> feeds,
        String address,
        OperationId operation)
        implements Page {

    public ExpiryPage {
        crews = List.copyOf(crews);
        endings = List.copyOf(endings);
        feeds = List.copyOf(feeds);
    }

    /** {@return what runs out by crew, each the earliest first} */
    public Map<String, List<Ending>> byCrew() {
        Map<String, List<Ending>> byCrew = new LinkedHashMap<>();
        crews.forEach(each -> byCrew.put(each.name(), new ArrayList<>()));
        endings.forEach(ending -> byCrew.computeIfAbsent(ending.member().crew(), name -> new ArrayList<>())
                .add(ending));
        byCrew.values().removeIf(List::isEmpty);
        return byCrew;
    }

    /** {@return whether a crew can be chosen} */
    public boolean hasChoice() {
        return crews.size() > 1;
    }

    /** {@return whether the reader may make calendars} */
    public boolean canMake() {
        return view.has(Role.SUPERVISOR);
    }

    /** {@return the name of a qualification} */
    public String name(Ending ending) {
        return words().name(ending.qualification());
    }

    /** {@return the last day of an ending} */
    public String day(Ending ending) {
        return view.words().day(ending.lastDay());
    }

    /** {@return how many days are left after today} */
    public long left(Ending ending) {
        return ChronoUnit.DAYS.between(today, ending.lastDay());
    }

    /** {@return what to do about it: said as soon as it is due soon} */
    public String next(Ending ending) {
        return words().next(ending.standing());
    }

    /** {@return where the evidence is} */
    public String evidence(Ending ending) {
        return "/board/" + ending.member().id() + "/qualification-" + ending.qualification();
    }

    /** {@return where the file is} */
    public String csvPath() {
        return "/expiry.csv" + crew.map(chosen -> "?crew=" + chosen.id()).orElse("");
    }

    /** {@return when a calendar was made} */
    public String made(Feed feed) {
        return view.text(
                "expiry.made", "person", feed.madeBy(), "time", view.words().time(feed.madeAt()));
    }

    /** {@return how many days the list looks ahead} */
    public int days() {
        return Expiry.DAYS;
    }

    private StandingWords words() {
        return new StandingWords(view.words());
    }
}
