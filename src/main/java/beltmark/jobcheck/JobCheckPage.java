package beltmark.jobcheck;

import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The job check.
 *
 * @param view what all pages share
 * @param query what was asked
 * @param crews the crews to choose from, all of them first; none for who sees only the own one
 * @param cards the hardware to choose from
 * @param fields how many of each further qualification
 * @param seats the proposed crew
 * @param able who could go
 * @param lapsing who could go today and not on the day
 * @param unable who could not go
 */
public record JobCheckPage(
        View view,
        JobQuery query,
        List<Option> crews,
        List<Option> cards,
        List<CountField> fields,
        List<SeatRow> seats,
        People able,
        People lapsing,
        People unable)
        implements Page {

    private static final String PATH = "/job-check";

    public JobCheckPage {
        crews = List.copyOf(crews);
        cards = List.copyOf(cards);
        fields = List.copyOf(fields);
        seats = List.copyOf(seats);
    }

    /**
     * How many of a qualification.
     *
     * @param name the name of the field
     * @param label what it counts
     * @param count how many
     */
    public record CountField(String name, String label, int count) {}

    /**
     * A place of the proposed crew.
     *
     * @param qualification what it takes, in words
     * @param person who is proposed, empty when nobody could
     * @param record where that person's record is
     * @param why in one or two sentences
     */
    public record SeatRow(String qualification, String person, String record, String why) {}

    /**
     * A list of people that is cut off where it gets long.
     *
     * @param rows the first of them
     * @param total how many there are
     */
    public record People(List<PersonRow> rows, int total) {
        public People {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A person.
     *
     * @param name who
     * @param crew whose crew
     * @param lines where the person will stand with each qualification
     */
    public record PersonRow(String name, String crew, List<Line> lines) {
        public PersonRow {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One qualification of a person.
     *
     * @param kind the status, for style
     * @param sign its sign
     * @param qualification what, in words
     * @param status the status with its day, in words
     * @param reasons why not; none when it is valid
     * @param next what to do next; empty when it is valid
     * @param evidence where the evidence is
     */
    public record Line(
            String kind,
            String sign,
            String qualification,
            String status,
            List<String> reasons,
            String next,
            String evidence) {
        public Line {
            reasons = List.copyOf(reasons);
        }
    }

    /** {@return whether every place is taken} */
    public boolean isComplete() {
        return seats.stream().noneMatch(seat -> seat.person().isEmpty());
    }

    /** {@return the answer in one sentence} */
    public String summary() {
        long open = seats.stream().filter(seat -> seat.person().isEmpty()).count();
        return view.text(
                "jobcheck.summary",
                "day",
                query.asOf().on(),
                "able",
                able.total(),
                "unable",
                unable.total(),
                "open",
                open);
    }

    /** {@return the address that shows the same} */
    public String link() {
        return query.path(PATH);
    }

    /** {@return where the file is} */
    public String csvPath() {
        return query.path(PATH + ".csv");
    }

    /** {@return how many are to be qualified on the hardware} */
    public int fitters() {
        return query.fitters();
    }

    /** {@return how many people can be asked for at most} */
    public int most() {
        return JobQuery.MOST;
    }
}
