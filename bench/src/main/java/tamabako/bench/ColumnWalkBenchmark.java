package tamabako.bench;

import java.math.BigInteger;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import tamabako.frame.Technique;
import tamabako.frame.walk.ColumnWalk;

@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(Columns.PROBLEMS)
public class ColumnWalkBenchmark {

    private final long[][] packed = new Columns().packed();
    private final BigInteger[][] big = new Columns().big();
    private final ColumnWalk walk = new ColumnWalk();

    @Benchmark
    public long counts() {
        long seen = 0;
        for (long[] column : packed) {
            walk.walk(column, column.length);
            seen += walk.total() + walk.strokes() + walk.count(Technique.TEN_WITH_FIVE);
        }
        return seen;
    }

    @Benchmark
    public long bigInteger() {
        long seen = 0;
        for (BigInteger[] column : big) {
            BigInteger total = column[0];
            for (int i = 1; i < column.length; i++) {
                total = total.add(column[i]);
            }
            seen += total.longValue();
        }
        return seen;
    }
}
