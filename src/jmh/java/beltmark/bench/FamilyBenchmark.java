package beltmark.bench;

import beltmark.content.Content;
import beltmark.core.grading.PartGrade;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.units.LengthUnit;
import beltmark.trainee.Typing;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** What it takes to draw one problem of a family, unfair draws included, and to grade the right answers to its parts. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class FamilyBenchmark {

    private static final int CODES = 1_024;

    /** The family's id; {@link #main} goes through all of them. */
    @Param("tape-reading")
    public String family = "";

    private ProblemFamily drawn;
    private List<ProblemCode> codes;
    private List<List<Map<String, String>>> typed;
    private int next;

    /** Measures every family of the content and prints the medians. */
    public static void main(String[] args) throws RunnerException {
        String[] families =
                Content.read().families().stream().map(ProblemFamily::id).toArray(String[]::new);
        var options = new OptionsBuilder()
                .include(FamilyBenchmark.class.getName())
                .param("family", families)
                .build();
        for (RunResult result : new Runner(options).run()) {
            double median = result.getPrimaryResult().getStatistics().getPercentile(50);
            System.out.printf("%-24s%8.1f µs%n", result.getParams().getParam("family"), median);
        }
    }

    @Setup
    public void prepare() {
        drawn = Content.read().findFamily(family).orElseThrow();
        codes = IntStream.range(0, CODES)
                .mapToObj(i -> new ProblemCode("B" + i))
                .toList();
        typed = codes.stream()
                .map(code ->
                        drawn.problem(code).parts().stream().map(Typing::right).toList())
                .toList();
    }

    @Benchmark
    public void drawAndGrade(Blackhole graded) {
        next = (next + 1) % CODES;
        Problem problem = drawn.problem(codes.get(next));
        for (int i = 0; i < problem.parts().size(); i++) {
            Part part = problem.parts().get(i);
            graded.consume(PartGrade.of(part, typed.get(next).get(i), LengthUnit.MILLIMETRE, OwnFigures.NONE));
        }
    }
}
