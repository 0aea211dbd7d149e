package tamabako.bench;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import tamabako.frame.Step;
import tamabako.frame.Technique;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;
import tamabako.frame.walk.ColumnWalk;
import tamabako.frame.walk.PackedStep;
import tamabako.frame.walk.PackedTrace;

/// One column of ten rows of ten digits: what the hand does, counted, noted in ints and noted in
/// objects, beside [BigInteger#add] of the same rows, which finds the total only.
///
/// Times are sampled, so that the median of many short samples stands when the machine is shared.
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(Columns.PROBLEMS)
public class ColumnWalkBenchmark {

    private final long[][] packed = new Columns().packed();
    private final BigInteger[][] big = new Columns().big();
    private final List<List<BigDecimal>> decimal = new Columns().decimal();
    private final ColumnWalk walk = new ColumnWalk();
    private final PackedTrace trace = new PackedTrace();
    private int turn;

    /// The peer: the total of each column by the platform's own big numbers.
    @Benchmark
    public void bigInteger(Blackhole hole) {
        for (BigInteger[] column : big) {
            hole.consume(total(column));
        }
    }

    /// Total, techniques, carries, borrows and strokes.
    @Benchmark
    public void counts(Blackhole hole) {
        for (long[] column : packed) {
            walk.walk(column, column.length);
            hole.consume(walk.total());
        }
    }

    /// Every step, in ints.
    @Benchmark
    public void packedTrace(Blackhole hole) {
        for (long[] column : packed) {
            trace.work(column, column.length);
            hole.consume(trace.total());
        }
    }

    /// Every step, in objects: one column an operation and all in turn, for one is long enough.
    @Benchmark
    @OperationsPerInvocation(1)
    public Working objectTrace() {
        turn = (turn + 1) % Columns.PROBLEMS;
        return ColumnWork.work(decimal.get(turn), tamabako.frame.Setup.COMMON);
    }

    private static BigInteger total(BigInteger[] column) {
        BigInteger total = column[0];
        for (int i = 1; i < column.length; i++) {
            total = total.add(column[i]);
        }
        return total;
    }

    /// Holds all four to the same totals, steps, techniques and strokes.
    @Setup
    public void compare() {
        for (int i = 0; i < Columns.PROBLEMS; i++) {
            walk.walk(packed[i], packed[i].length);
            trace.work(packed[i], packed[i].length);
            Working working = ColumnWork.work(decimal.get(i), tamabako.frame.Setup.COMMON);
            Same.of(
                    "total",
                    total(big[i]),
                    walk.total(),
                    trace.total(),
                    working.outcome().answer());
            Same.of("strokes", walk.tally().strokes(), strokes(trace), strokes(working));
            for (Technique technique : Technique.values()) {
                Same.of(
                        technique.word(),
                        walk.tally().count(technique),
                        count(trace, technique),
                        count(working, technique));
            }
        }
    }

    private static int strokes(PackedTrace trace) {
        int strokes = 0;
        for (int i = 0; i < trace.size(); i++) {
            strokes += PackedStep.strokes(trace.step(i));
        }
        return strokes;
    }

    private static int count(PackedTrace trace, Technique technique) {
        int count = 0;
        for (int i = 0; i < trace.size(); i++) {
            count += PackedStep.technique(trace.step(i)) == technique ? 1 : 0;
        }
        return count;
    }

    private static int strokes(Working working) {
        return steps(working).mapToInt(step -> step.strokes().size()).sum();
    }

    private static int count(Working working, Technique technique) {
        return (int) steps(working).filter(step -> step.technique() == technique).count();
    }

    private static Stream<Step> steps(Working working) {
        return Stream.concat(working.setting().steps().stream(), working.trace().steps().stream());
    }
}
