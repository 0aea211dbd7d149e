package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.Outline;
import tamabako.insight.readiness.Outlines;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Task;
import tamabako.insight.readiness.Variety;
import tamabako.insight.readiness.Worked;
import tamabako.insight.slip.EventTables;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;

/// The forecast of one pupil with 300 answers: three sections each with its clock, one sheet with
/// one clock, and six sections with thirteen ranks, each of them known by fifty answers.
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ForecastBenchmark {

    private final Outline sections = ExamPaper.outline();
    private final Outline sheet = outline("abacus-one-sheet", "3");
    private final Outline dan = outline("dan-six-sections", "dan");
    private final List<Worked> answers = answers();
    private final List<Worked> ofDan = ofDan();

    private List<Worked> answers() {
        SplittableRandom random = new SplittableRandom(1);
        return new ExamPupil(random).practise(100, sections, random);
    }

    /// Fifty answers of each section, of a pupil who works much faster than usual.
    private List<Worked> ofDan() {
        SplittableRandom random = new SplittableRandom(1);
        List<Worked> worked = new ArrayList<>();
        for (Outline.Part part : dan.parts()) {
            for (int i = 0; i < 50; i++) {
                Task task = part.tasks().get(i % part.tasks().size());
                worked.add(
                        new Worked(
                                part.field(),
                                task.slips(),
                                random.nextDouble() < Math.exp(-0.4 * task.slips()),
                                OptionalDouble.of(-1.5 + 0.25 * random.nextGaussian()),
                                OptionalLong.empty()));
            }
        }
        return worked;
    }

    private static Outline outline(String ladder, String grade) {
        Ladder found = Ladders.ladder(ladder).orElseThrow();
        return new Outlines(new EventTables())
                .of(ladder, found.grade(grade).orElseThrow())
                .orElseThrow();
    }

    private static Readiness of(List<Worked> answers, Outline outline) {
        return Forecast.PLAIN.of(Standing.of(answers, Variety.USUAL), outline);
    }

    /// Three sections, each to be passed.
    @Benchmark
    public Readiness sections() {
        return of(answers, sections);
    }

    /// One sheet, passed by its points.
    @Benchmark
    public Readiness sheet() {
        return of(answers, sheet);
    }

    /// The chance of every rank, what limits, what helps.
    @Benchmark
    public Readiness dan() {
        return of(ofDan, dan);
    }

    /// The chance alone, as a whole class is looked through.
    @Benchmark
    public double chanceOfDan() {
        return Forecast.PLAIN.chance(Standing.of(ofDan, Variety.USUAL), dan);
    }

    /// What is believed, without any paper.
    @Benchmark
    public Standing standing() {
        return Standing.of(answers, Variety.USUAL);
    }
}
