package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import tamabako.insight.mastery.Forgetting;
import tamabako.insight.pace.LogSeconds;
import tamabako.insight.pace.PaceAnswer;
import tamabako.insight.pace.PacePopulation;
import tamabako.insight.pace.PaceTally;
import tamabako.insight.pace.Part;
import tamabako.insight.pace.PartPace;
import tamabako.insight.pace.PupilPace;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.PupilClock;
import tamabako.insight.slip.Move;
import tamabako.problems.Attempt;
import tamabako.problems.Column;

/// Pupils of whom it is known how long each move takes them: how well that is told after so many
/// problems, and how well times of further problems are foretold.
final class PaceTrial {

    /// How many further problems are foretold of each pupil.
    private static final int FURTHER = 20;

    private static final double SPEED = 0.3;
    private static final double PART = 0.25;

    private record Problem(Column column, double seconds, double middle) {}

    private record Seen(
            PupilClock clock, PaceTally tally, double perDigit, List<Problem> further) {}

    private final List<ColumnPlan> plans;
    private final List<Seen> seen;

    /// Lets so many pupils work so many problems each, of these plans in turn.
    PaceTrial(List<ColumnPlan> plans, int pupils, int problems, double noise, long seed) {
        this.plans = plans;
        SplittableRandom chance = new SplittableRandom(seed);
        List<SplittableRandom> chances = new ArrayList<>();
        for (int i = 0; i < pupils; i++) {
            chances.add(chance.split());
        }
        this.seen =
                IntStream.range(0, pupils)
                        .parallel()
                        .mapToObj(i -> pupil(problems, noise, chances.get(i)))
                        .toList();
    }

    private Seen pupil(int problems, double noise, SplittableRandom chance) {
        PupilClock clock = PupilClock.usual(noise).drawn(SPEED, PART, chance);
        PaceTally tally = new PaceTally();
        double perDigit = 0;
        List<Problem> further = new ArrayList<>();
        for (int i = 0; i < problems + FURTHER; i++) {
            Problem problem = problem(plans.get(i % plans.size()), clock, chance);
            if (i >= problems) {
                further.add(problem);
            } else {
                tally.add(answer(problem));
                perDigit += Math.log(problem.seconds() / digits(problem.column())) / problems;
            }
        }
        return new Seen(clock, tally, perDigit, further);
    }

    private static Problem problem(ColumnPlan plan, PupilClock clock, SplittableRandom chance) {
        List<Long> rows = plan.draw(chance);
        Fate fate = Fate.kind();
        ColumnPupil.writes(rows, fate);
        return new Problem(
                ColumnPlan.column(rows),
                clock.seconds(fate, rows.size(), chance),
                clock.middle(fate, rows.size()));
    }

    private static PaceAnswer answer(Problem problem) {
        String right = problem.column().answer().value().toPlainString();
        return PaceAnswer.of(
                        new Attempt(
                                problem.column(),
                                right,
                                OptionalDouble.of(problem.seconds()),
                                Optional.empty(),
                                Optional.empty(),
                                List.of()))
                .orElseThrow();
    }

    private static int digits(Column column) {
        return column.rows().stream().mapToInt(row -> row.precision()).sum();
    }

    /// One line of the table.
    String line(String name, int problems, double noise) {
        PacePopulation shipped = PacePopulation.shipped().with(Forgetting.NONE);
        PacePopulation learned = shipped.learnedFrom(seen.stream().map(Seen::tally).toList());
        long before = System.nanoTime();
        List<PupilPace> paces = seen.stream().map(one -> one.tally().told(learned)).toList();
        double millis = (System.nanoTime() - before) / 1e6 / seen.size();
        double ours = 0;
        double byDigit = 0;
        double deviations = 0;
        Score covered = new Score();
        for (Move move : Move.values()) {
            double[] truth = seen.stream().mapToDouble(one -> one.clock().of(move)).toArray();
            double[] own =
                    seen.stream()
                            .mapToDouble(one -> one.clock().of(move) / all(one.clock()))
                            .toArray();
            List<PartPace> parts = paces.stream().map(pace -> of(pace, move)).toList();
            double[] told = parts.stream().mapToDouble(PartPace::times).toArray();
            double[] toldOwn =
                    IntStream.range(0, told.length)
                            .mapToDouble(i -> told[i] / paces.get(i).altogether().times())
                            .toArray();
            double[] digits = seen.stream().mapToDouble(Seen::perDigit).toArray();
            ours += Ranks.correlation(truth, told) / Move.values().length;
            byDigit += Ranks.correlation(truth, digits) / Move.values().length;
            deviations += Ranks.correlation(own, toldOwn) / Move.values().length;
            double middle = middle(truth, told);
            for (int i = 0; i < truth.length; i++) {
                double truly = truth[i] / middle;
                covered.note(parts.get(i).low() <= truly && truly <= parts.get(i).high());
            }
        }
        return "| %s | %d | %.2f | %.3f | %.3f | %.3f | %s | %s | %.2f ms |"
                .formatted(
                        name,
                        problems,
                        noise,
                        ours,
                        byDigit,
                        deviations,
                        covered.share(),
                        foretold(paces),
                        millis);
    }

    /// How long the middle pupil takes for a step, by the pupils and what is told of them.
    private static double middle(double[] truth, double[] told) {
        double log = 0;
        for (int i = 0; i < truth.length; i++) {
            log += Math.log(truth[i] / told[i]) / truth.length;
        }
        return Math.exp(log);
    }

    private static double all(PupilClock clock) {
        double log = 0;
        for (Move move : Move.values()) {
            log += Math.log(clock.of(move)) / Move.values().length;
        }
        return Math.exp(log);
    }

    private static PartPace of(PupilPace pace, Move move) {
        return pace.parts().stream()
                .filter(part -> part.part() == Part.of(move))
                .findFirst()
                .orElseThrow();
    }

    private String foretold(List<PupilPace> paces) {
        double ours = 0;
        double byDigit = 0;
        double floor = 0;
        int count = 0;
        Score in = new Score();
        for (int i = 0; i < seen.size(); i++) {
            for (Problem problem : seen.get(i).further()) {
                LogSeconds expected = paces.get(i).expect(problem.column());
                ours += square(problem.seconds() / expected.seconds() - 1);
                double perDigit = Math.exp(seen.get(i).perDigit()) * digits(problem.column());
                byDigit += square(problem.seconds() / perDigit - 1);
                floor += square(problem.seconds() / problem.middle() - 1);
                double off = (Math.log(problem.seconds()) - expected.mean()) / expected.deviation();
                in.note(Math.abs(off) < 1.6449);
                count++;
            }
        }
        double root = Math.sqrt(floor / count);
        return "%.4f (%.3f times) | %.4f | %.4f | %s"
                .formatted(
                        Math.sqrt(ours / count),
                        Math.sqrt(ours / count) / root,
                        Math.sqrt(byDigit / count),
                        root,
                        in.share());
    }

    private static double square(double number) {
        return number * number;
    }

    static String head() {
        return "| columns | problems | noise | move: ours | time a digit | beside the pupil's other"
                + " moves | intervals hold | foretold: off by | by time a digit | floor | intervals"
                + " hold | a pupil |";
    }
}
