package tamabako.bench.insight;

import java.io.PrintStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import tamabako.insight.pace.WorkParts;
import tamabako.insight.pooling.Manner;
import tamabako.insight.readiness.Field;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.Outline;
import tamabako.insight.readiness.Standing;
import tamabako.insight.readiness.Task;
import tamabako.insight.readiness.Variety;
import tamabako.insight.readiness.Worked;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.PupilClock;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.effort.Effort;
import tamabako.problems.grade.Amounts;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Numbering;
import tamabako.problems.grade.Pass;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.Signs;
import tamabako.problems.marking.WritingRules;

/// Writes the table of docs/validation.md on the clock: simulated pupils whose moves differ in time
/// practise columns, and then sit a section whose limit lies near the time they need. How good is
/// the chance that was told of finishing it, by the pupil's pace altogether only, and by the
/// pupil's own seconds for each move as well?
public final class TimeValidation {

    private static final long SEED = 20_261_130;
    private static final int EXAM = 10;
    private static final double SPEED = 0.3;
    private static final double PART = 0.25;
    private static final double NOISE = 0.25;
    private static final Field COLUMNS = new Field(Field.Sort.COLUMNS, Manner.FRAME);

    /// Slips so rare that everything depends on the clock.
    private static final double HARDLY_ANY = 1e-6;

    private TimeValidation() {}

    private record Told(double plain, double own, double truly, boolean done) {}

    /// What is practised, and what the section asks for.
    private record Set(String name, List<ColumnPlan> practised, ColumnPlan asked) {}

    /// Runs it with so many pupils (4,000 if not given).
    public static void main(String[] arguments) {
        PrintStream out = System.out;
        int pupils = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 4_000;
        List<ColumnPlan> varied = new ArrayList<>();
        for (int digits = 1; digits <= 6; digits++) {
            varied.add(new ColumnPlan(17 - 2 * digits, digits));
        }
        List<Set> sets =
                List.of(
                        new Set(
                                "as practised",
                                List.of(new ColumnPlan(10, 4)),
                                new ColumnPlan(10, 4)),
                        new Set("varied, then 10 × 5", varied, new ColumnPlan(10, 5)),
                        new Set("varied, then 15 × 1", varied, new ColumnPlan(15, 1)),
                        new Set(
                                "4 × 2, then 10 × 5",
                                List.of(new ColumnPlan(4, 2)),
                                new ColumnPlan(10, 5)));
        out.println("| columns | problems | judge | AUC | Brier | ECE | slope |");
        for (Set set : sets) {
            for (int count : new int[] {10, 30, 100}) {
                List<Told> told =
                        IntStream.range(0, pupils)
                                .parallel()
                                .mapToObj(i -> pupil(SEED + i, count, set))
                                .toList();
                ForecastScore plain = new ForecastScore();
                ForecastScore own = new ForecastScore();
                ForecastScore truly = new ForecastScore();
                for (Told one : told) {
                    plain.note(one.plain(), one.done());
                    own.note(one.own(), one.done());
                    truly.note(one.truly(), one.done());
                }
                print(out, set, count, "pace altogether", plain);
                print(out, set, count, "each move too", own);
                print(out, set, count, "true times", truly);
            }
        }
    }

    private static void print(
            PrintStream out, Set set, int count, String judge, ForecastScore score) {
        out.printf(
                Locale.ROOT,
                "| %s | %d | %s | %.3f | %.4f | %.4f | %.2f |%n",
                set.name(),
                count,
                judge,
                score.area(),
                score.brier(),
                score.calibrationError(),
                score.slope());
    }

    /// A problem, with the middle time of the pupil for it.
    private record Drawn(Column column, double middle) {}

    private static Drawn draw(ColumnPlan plan, PupilClock clock, SplittableRandom chance) {
        List<Long> rows = plan.draw(chance);
        Fate fate = Fate.kind();
        ColumnPupil.writes(rows, fate);
        return new Drawn(ColumnPlan.column(rows), clock.middle(fate, rows.size()));
    }

    private static Told pupil(long seed, int count, Set set) {
        SplittableRandom chance = new SplittableRandom(seed);
        PupilClock clock = PupilClock.usual(NOISE).drawn(SPEED, PART, chance);
        List<Worked> plain = new ArrayList<>();
        List<Worked> own = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Drawn drawn = draw(set.practised().get(i % set.practised().size()), clock, chance);
            double seconds = drawn.middle() * Math.exp(NOISE * chance.nextGaussian());
            double usual = Effort.of(drawn.column()).seconds();
            OptionalDouble pace = OptionalDouble.of(Math.log(seconds / usual));
            OptionalLong day = OptionalLong.empty();
            plain.add(new Worked(COLUMNS, HARDLY_ANY, true, pace, day));
            own.add(
                    new Worked(
                            COLUMNS,
                            HARDLY_ANY,
                            true,
                            pace,
                            day,
                            Optional.of(WorkParts.of(drawn.column()))));
        }
        List<Task> tasks = new ArrayList<>();
        double needed = 0;
        double middle = 0;
        double square = 0;
        for (int i = 0; i < EXAM; i++) {
            Drawn drawn = draw(set.asked(), clock, chance);
            tasks.add(
                    new Task(
                            HARDLY_ANY,
                            Effort.of(drawn.column()).seconds(),
                            Optional.of(WorkParts.of(drawn.column()))));
            needed += drawn.middle() * Math.exp(NOISE * chance.nextGaussian());
            middle += drawn.middle() * Math.exp(NOISE * NOISE / 2);
            square += Math.pow(drawn.middle(), 2);
        }
        double off = 0.3 * (2 * chance.nextDouble() - 1);
        long limit = Math.max(1, Math.round(middle * Math.exp(off)));
        Outline outline = outline(tasks, set.asked(), limit);
        double spread =
                Math.sqrt(square * Math.expm1(NOISE * NOISE))
                        * Math.exp(NOISE * NOISE / 2)
                        / middle;
        return new Told(
                told(plain, outline),
                told(own, outline),
                0.5 * ForecastValidation.erfc(-Math.log(limit / middle) / spread / Math.sqrt(2)),
                needed <= limit);
    }

    private static double told(List<Worked> practice, Outline outline) {
        return Forecast.PLAIN.chance(Standing.of(practice, KNOWN), outline);
    }

    /// The spreads that are simulated; the days do not differ.
    private static final Variety KNOWN =
            new Variety(
                    new Variety.Trait(0, 0.1, 0.1, 0.05),
                    new Variety.Trait(0, 0.4, 0.15, 0.005),
                    NOISE);

    private static Outline outline(List<Task> tasks, ColumnPlan plan, long limit) {
        Format format =
                new Format.Columns(
                        new Lengths.Equal(plan.rows(), plan.digits()),
                        Signs.ADDED,
                        Amounts.PLAIN,
                        Beadwork.ANY);
        Section section =
                new Section(
                        "columns",
                        Label.of("Columns"),
                        List.of(new Batch(tasks.size(), format)),
                        10,
                        Optional.of(Duration.ofSeconds(limit)),
                        Mode.FRAME,
                        Section.Order.AS_LISTED,
                        List.of());
        Grade grade =
                new Grade(
                        "simulated",
                        Label.of("simulated"),
                        List.of(section),
                        Optional.empty(),
                        new Pass.PointsInEach(10 * tasks.size()),
                        Numbering.BY_SECTION,
                        WritingRules.EASY,
                        Optional.empty(),
                        List.of());
        return new Outline("simulated", grade, List.of(new Outline.Part(section, COLUMNS, tasks)));
    }
}
