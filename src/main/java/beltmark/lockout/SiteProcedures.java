package beltmark.lockout;

import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Question;
import beltmark.core.procedure.ProcedureCard;
import beltmark.core.procedure.ProcedureQuestions;
import beltmark.recordbook.RecordBook;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** The questions made from the written procedures of the site, and who has passed them. */
final class SiteProcedures {

    private final RecordBook book;
    private final DrawStore store = new DrawStore();

    SiteProcedures(RecordBook book) {
        this.book = book;
    }

    /** {@return the questions on the latest version of every procedure} */
    List<BankQuestion> list(Handle handle) {
        return store.listProcedures(handle).stream()
                .map(record -> card(handle, record))
                .flatMap(card -> ProcedureQuestions.of(card).stream())
                .toList();
    }

    /** {@return the question of an id, also of an earlier version} */
    Optional<Question> find(Handle handle, String id) {
        List<String> procedure = ProcedureQuestions.procedureOf(id);
        if (procedure.isEmpty()) {
            return Optional.empty();
        }
        return store.findProcedure(handle, procedure.get(0), Integer.parseInt(procedure.get(1)))
                .map(record -> card(handle, record))
                .flatMap(card -> ProcedureQuestions.of(card).stream()
                        .map(BankQuestion::question)
                        .filter(question -> question.id().equals(id))
                        .findFirst());
    }

    /** Notes who has passed a paper with questions on procedures. */
    void hold(Handle handle, List<Question> questions, long person, long result) {
        questions.stream()
                .map(question -> ProcedureQuestions.procedureOf(question.id()))
                .filter(procedure -> !procedure.isEmpty())
                .collect(Collectors.toSet())
                .forEach(procedure ->
                        store.addHolder(handle, procedure.get(0), Integer.parseInt(procedure.get(1)), person, result));
    }

    private ProcedureCard card(Handle handle, long record) {
        return book.find(handle, record).orElseThrow().bodyAs(Entered.class).card();
    }

    /**
     * What the quiz needs of the body of the records {@code procedure.entered} and {@code procedure.changed}.
     *
     * @param card the version
     */
    record Entered(ProcedureCard card) {}
}
