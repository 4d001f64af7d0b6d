package beltmark.jobcheck;

import beltmark.core.crew.Candidate;
import beltmark.core.crew.Proposal;
import beltmark.core.qualification.Standing;
import beltmark.core.setup.HardwareCard;
import beltmark.jobcheck.JobCheckPage.CountField;
import beltmark.jobcheck.JobCheckPage.Line;
import beltmark.jobcheck.JobCheckPage.People;
import beltmark.jobcheck.JobCheckPage.PersonRow;
import beltmark.jobcheck.JobCheckPage.SeatRow;
import beltmark.qualification.StandingWords;
import beltmark.web.Option;
import beltmark.web.View;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the page of the job check. */
record JobCheckPages(View view, List<HardwareCard> hardware, List<Crew> crews, JobQuery query) {

    /** How many people each list shows; the file has all of them. */
    private static final int MOST_SHOWN = 50;

    private static final People NOBODY = new People(List.of(), 0);

    JobCheckPage unasked() {
        return page(List.of(), NOBODY, NOBODY, NOBODY);
    }

    JobCheckPage answered(JobCheck.Answer answer) {
        return page(
                answer.seats().stream().map(this::seat).toList(),
                people(answer, Checked::canGo, JobCheckPages::all),
                people(answer, one -> !one.lapsing().isEmpty(), Checked::lapsing),
                people(answer, one -> !one.canGo(), JobCheckPages::all));
    }

    private JobCheckPage page(List<SeatRow> seats, People able, People lapsing, People unable) {
        Stream<Option> each = crews.stream().map(crew -> new Option(Long.toString(crew.id()), crew.name()));
        Stream<Option> all = crews.isEmpty() ? Stream.of() : Stream.of(new Option("", view.text("jobcheck.all-crews")));
        return new JobCheckPage(
                view,
                query,
                Stream.concat(all, each).toList(),
                hardware.stream()
                        .map(card -> new Option(card.id(), view.text("hardware.name." + card.id())))
                        .toList(),
                query.others().stream()
                        .map(place -> new CountField(
                                JobQuery.field(place), words().name(place.qualification()), place.count()))
                        .toList(),
                seats,
                able,
                lapsing,
                unable);
    }

    private StandingWords words() {
        return new StandingWords(view.words());
    }

    private SeatRow seat(Proposal.Seat seat) {
        String qualification = words().name(seat.qualification());
        if (seat.candidate().isEmpty()) {
            String why =
                    view.text(seat.able() == 0 ? "jobcheck.nobody-can" : "jobcheck.nobody-left", "able", seat.able());
            return new SeatRow(qualification, "", "", why);
        }
        Candidate candidate = seat.candidate().get();
        String why = view.text(
                "jobcheck.why",
                "day",
                candidate.lastDay(seat.qualification()),
                "rank",
                seat.rank(),
                "able",
                seat.able());
        return new SeatRow(qualification, candidate.name(), record(candidate.person()), why + elsewhere(seat));
    }

    private String elsewhere(Proposal.Seat seat) {
        if (seat.elsewhere().isEmpty()) {
            return "";
        }
        String names = seat.elsewhere().stream().map(Candidate::name).collect(Collectors.joining(", "));
        return " " + view.text("jobcheck.elsewhere", "names", names);
    }

    private String record(long person) {
        return "/board/" + person + query.asOf().query();
    }

    private static List<String> all(Checked one) {
        return one.standings().stream().map(Checked.For::qualification).toList();
    }

    private People people(
            JobCheck.Answer answer, Predicate<Checked> who, Function<Checked, List<String>> qualifications) {
        List<Checked> chosen = answer.people().stream().filter(who).toList();
        List<PersonRow> rows = chosen.stream()
                .limit(MOST_SHOWN)
                .map(one -> new PersonRow(
                        one.member().name(),
                        one.member().crew(),
                        one.standings().stream()
                                .filter(line -> qualifications.apply(one).contains(line.qualification()))
                                .map(line -> line(one.member(), line))
                                .toList()))
                .toList();
        return new People(rows, chosen.size());
    }

    private Line line(Member member, Checked.For one) {
        Standing standing = one.standing();
        boolean valid = standing.status().isValid();
        return new Line(
                standing.status().id(),
                StandingWords.sign(standing.status()),
                words().name(one.qualification()),
                (words().status(standing) + " " + words().day(standing)).strip(),
                valid ? List.of() : words().reasons(standing),
                valid ? "" : words().next(standing),
                "/board/" + member.id() + "/qualification-" + one.qualification()
                        + query.asOf().query());
    }
}
