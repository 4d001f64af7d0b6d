package beltmark.expiry;

import beltmark.qualification.StandingWords;
import beltmark.texts.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/**
 * Endings as a calendar after RFC 5545: a whole-day event on each last day. An event keeps its name when its day moves, so
 * that a program that fetches the calendar again moves it too.
 */
final class CrewCalendar {

    /** Letters with accents take two octets, and a line should have no more than 75 of them. */
    private static final int CHARACTERS_A_LINE = 60;

    private static final String MAKER = "-//Beltmark//Crew calendar//EN";

    private final Words words;
    private final byte[] key;

    /**
     * @param words the language
     * @param key a secret of the site, so that events of two sites never have the same name
     */
    CrewCalendar(Words words, byte[] key) {
        this.words = words;
        this.key = key.clone();
    }

    /**
     * {@return the calendar as a file}
     *
     * @param endings what runs out
     * @param now when the file is made
     */
    String write(List<Ending> endings, Instant now) {
        Calendar calendar = new Calendar();
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(new ProdId(MAKER));
        calendar.add(ImmutableCalScale.GREGORIAN);
        endings.forEach(ending -> calendar.add(event(ending, now)));
        StringWriter file = new StringWriter();
        try {
            new CalendarOutputter(true, CHARACTERS_A_LINE).output(calendar, file);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return file.toString();
    }

    private VEvent event(Ending ending, Instant now) {
        StandingWords says = new StandingWords(words);
        String summary = words.say(
                "expiry.calendar-event",
                Map.of(
                        "qualification",
                        says.name(ending.qualification()),
                        "person",
                        ending.member().name()));
        VEvent event = new VEvent(false);
        event.add(new Uid(name(ending)));
        event.add(new DtStamp(now));
        event.add(new DtStart<>(ending.lastDay()));
        event.add(new Summary(summary));
        event.add(new Description(
                words.say("expiry.calendar-note", Map.of("crew", ending.member().crew()))));
        event.add(ImmutableTransp.TRANSPARENT);
        return event;
    }

    private String name(Ending ending) {
        byte[] what = (ending.member().id() + "/" + ending.qualification()).getBytes(StandardCharsets.UTF_8);
        byte[] all =
                ByteBuffer.allocate(key.length + what.length).put(key).put(what).array();
        return UUID.nameUUIDFromBytes(all).toString();
    }
}
