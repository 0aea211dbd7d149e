package tamabako.bench.insight;

import java.util.Arrays;
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
import tamabako.insight.readiness.ScoreSums;

/// The chances of all scores of fifty problems of 2, 5 and 10 points, with and without the clock,
/// beside reading them off after every problem.
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ScoreBenchmark {

    private static final int PROBLEMS = 50;

    private final double[] right = new double[PROBLEMS];
    private final double[] going = new double[PROBLEMS];
    private final int[] points = new int[PROBLEMS];
    private final ScoreSums sums = new ScoreSums(500);
    private final double[] first = new double[501];
    private final double[] mixed = new double[501];

    /// Fills the problems.
    public ScoreBenchmark() {
        int[] worth = {2, 5, 10};
        for (int i = 0; i < PROBLEMS; i++) {
            right[i] = 0.5 + 0.009 * i;
            going[i] = 1 - 0.004 * i;
            points[i] = worth[i % worth.length];
        }
    }

    /// All reached.
    @Benchmark
    public double plain() {
        sums.work(right, points, PROBLEMS);
        return sums.chance(100);
    }

    /// Against the clock, in one pass from the last problem to the first.
    @Benchmark
    public double clocked() {
        sums.work(right, points, going, PROBLEMS);
        return sums.chance(100);
    }

    /// Against the clock, as the formula has it: the scores of the first m problems, weighed after
    /// each m.
    @Benchmark
    public double clockedReadOff() {
        Arrays.fill(first, 0);
        Arrays.fill(mixed, 0);
        first[0] = 1;
        double reached = 1;
        int most = 0;
        for (int m = 0; m < PROBLEMS; m++) {
            double stops = reached * (1 - going[m]);
            for (int score = 0; score <= most; score++) {
                mixed[score] += stops * first[score];
            }
            reached *= going[m];
            most += points[m];
            for (int score = most; score >= points[m]; score--) {
                first[score] = first[score] * (1 - right[m]) + right[m] * first[score - points[m]];
            }
            for (int score = points[m] - 1; score >= 0; score--) {
                first[score] *= 1 - right[m];
            }
        }
        for (int score = 0; score <= most; score++) {
            mixed[score] += reached * first[score];
        }
        return mixed[100];
    }
}
