package beltmark.review;

import beltmark.core.lockout.Judgement;
import beltmark.web.View;
import java.util.List;

/** Makes the page of a finished sitting. */
record SittingPages(View view) {

    SittingPage page(SittingRecords records) {
        FinishedSitting result = records.result();
        return new SittingPage(
                view,
                result.person(),
                view.text(
                        "review.sitting.summary",
                        "crew",
                        result.crew(),
                        "time",
                        result.finishedAt(),
                        "version",
                        result.version(),
                        "right",
                        result.right(),
                        "of",
                        result.asked(),
                        "needed",
                        result.needed()),
                result.passed(),
                result.record(),
                records.answers().stream().map(SittingPages::answer).toList(),
                records.all().stream()
                        .map(sitting -> other(sitting, result.sitting()))
                        .toList());
    }

    private static SittingPage.AnswerRow answer(SittingRecords.Kept kept) {
        RecordedAnswer answer = kept.answer();
        boolean right = answer.judgement().equals(Judgement.RIGHT.id());
        return new SittingPage.AnswerRow(
                answer.number(),
                answer.ask(),
                answer.critical(),
                answer.isOrder(),
                answer.judgement(),
                answer.texts(answer.chosen()),
                right ? List.of() : answer.texts(answer.right()),
                answer.source(),
                kept.record());
    }

    private SittingPage.OtherRow other(FinishedSitting sitting, long shown) {
        return new SittingPage.OtherRow(
                view.text(
                        "review.page.last." + (sitting.passed() ? "passed" : "not-passed"),
                        "day",
                        view.words().day(sitting.finishedAt()),
                        "right",
                        sitting.right(),
                        "of",
                        sitting.asked()),
                "/review/sittings/" + sitting.sitting(),
                sitting.sitting() == shown);
    }
}
