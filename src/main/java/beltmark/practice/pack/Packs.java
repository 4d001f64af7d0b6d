package beltmark.practice.pack;

import beltmark.content.Content;
import beltmark.core.grading.PartGrade;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.db.Database;
import beltmark.practice.Practice;
import beltmark.practice.Worker;
import beltmark.practice.pack.PackRecord.Asked;
import beltmark.practice.pack.PackRecord.SheetRecord;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** The verbs of paper packs: make one, type in what was written. */
public final class Packs {

    /** The most problems of a family on a sheet. */
    static final int MOST_OF_A_FAMILY = 5;

    private static final int OPERATION_STEM = 20;

    private final Database database;
    private final RecordBook book;
    private final Content content;
    private final Practice practice;
    private final Clock clock;
    private final RandomGenerator random;
    private final PackStore store = new PackStore();

    public Packs(
            Database database,
            RecordBook book,
            Content content,
            Practice practice,
            Clock clock,
            RandomGenerator random) {
        this.database = database;
        this.book = book;
        this.content = content;
        this.practice = practice;
        this.clock = clock;
        this.random = random;
    }

    /** {@return the ids of all families, in the order in which they are taught} */
    List<String> families() {
        return content.families().stream().map(ProblemFamily::id).toList();
    }

    /** {@return who can get a sheet from a trainer: the trainer's crew} */
    List<Receiver> receivers(Visitor trainer) {
        return database.read(handle -> store.listReceivers(handle, trainer.crewId()));
    }

    /** {@return the last packs of a trainer} */
    List<PackLine> packs(Visitor trainer) {
        return database.read(handle -> store.listPacks(handle, trainer.personId()));
    }

    /** {@return a pack of a trainer; throws {@link NotFound} for any other} */
    Pack get(Visitor trainer, long seq) {
        return database.read(handle -> store.find(handle, seq, trainer.personId()))
                .orElseThrow(() -> new NotFound("no pack " + seq));
    }

    /** {@return the sheet of a person in a pack; throws {@link NotFound} when there is none} */
    Pack.Sheet getSheet(Pack pack, long person) {
        return pack.sheets().stream()
                .filter(sheet -> sheet.person().id() == person)
                .findFirst()
                .orElseThrow(() -> new NotFound("no sheet of " + person));
    }

    /** {@return the problem of a sheet} */
    Problem problem(Asked asked) {
        return practice.getProblem(asked.family(), asked.code());
    }

    /** Makes a pack; its number is there when it is recorded. */
    CompletableFuture<Long> make(
            Visitor trainer, List<String> chosen, int count, List<Long> people, OperationId operation) {
        List<SheetRecord> sheets = people.stream()
                .map(person -> new SheetRecord(person, draw(chosen, count)))
                .toList();
        Instant now = clock.instant();
        return database.write(handle -> {
            var recorded = book.append(
                    handle,
                    new Entry(
                            "practice.pack",
                            operation.value(),
                            trainer.personId(),
                            trainer.personId(),
                            now,
                            new PackRecord(sheets)));
            if (recorded.isNew()) {
                store.add(handle, recorded.sequence(), trainer.personId(), trainer.crewId(), now, sheets);
            }
            return recorded.sequence();
        });
    }

    /** {@return fresh problems, which nobody else on any sheet has} */
    private List<Asked> draw(List<String> chosen, int count) {
        return content.families().stream()
                .filter(family -> chosen.contains(family.id()))
                .flatMap(family -> IntStream.range(0, count)
                        .mapToObj(i -> new Asked(
                                family.id(),
                                family.version(),
                                ProblemCode.fresh(random).text())))
                .toList();
    }

    /**
     * Judges what was written, without recording it.
     *
     * @param written what was written, by the place of the problem on the sheet and the part
     * @return the judgement of each part that was worked, by place and part
     */
    Map<String, PartGrade> judge(Pack.Sheet sheet, Map<String, Map<String, String>> written) {
        Map<String, PartGrade> grades = new LinkedHashMap<>();
        for (int place = 0; place < sheet.problems().size(); place++) {
            OwnFigures own = OwnFigures.NONE;
            for (Part part : problem(sheet.problems().get(place)).parts()) {
                String key = place + "." + part.id();
                Map<String, String> typed = written.getOrDefault(key, Map.of());
                if (typed.values().stream().allMatch(String::isBlank)) {
                    break;
                }
                PartGrade grade =
                        PartGrade.of(part, typed, sheet.person().graduation().unit(), own);
                grades.put(key, grade);
                own = grade.addTo(own, part);
            }
        }
        return grades;
    }

    /** Records what was written, all of it or nothing; every part that was worked is readable. */
    CompletableFuture<Boolean> enter(
            Visitor trainer,
            Pack pack,
            Pack.Sheet sheet,
            Map<String, Map<String, String>> written,
            OperationId operation) {
        Worker worker = new Worker(
                sheet.person().id(), trainer.personId(), sheet.person().graduation(), pack.seq());
        return database.write(handle -> {
            Iterator<OperationId> names = names(operation);
            if (book.isRecorded(handle, names(operation).next().value())) {
                return true;
            }
            for (int place = 0; place < sheet.problems().size(); place++) {
                Problem problem = problem(sheet.problems().get(place));
                practice.enter(handle, worker, problem, worked(problem, place, written), names);
            }
            return true;
        });
    }

    private static Map<String, Map<String, String>> worked(
            Problem problem, int place, Map<String, Map<String, String>> written) {
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        for (Part part : problem.parts()) {
            Map<String, String> typed = written.getOrDefault(place + "." + part.id(), Map.of());
            if (typed.values().stream().allMatch(String::isBlank)) {
                return parts;
            }
            parts.put(part.id(), typed);
        }
        return parts;
    }

    /** One sending makes many records; their names follow from its own, so that sending it twice makes them once. */
    private static Iterator<OperationId> names(OperationId operation) {
        String stem = operation.value().substring(0, OPERATION_STEM);
        List<OperationId> names = new ArrayList<>();
        for (int i = 0; i < 36 * 36; i++) {
            String number = Integer.toString(i, 36);
            names.add(new OperationId(stem + (number.length() < 2 ? "0" + number : number)));
        }
        return names.iterator();
    }
}
