package tamabako.bench.insight;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;
import tamabako.problems.Column;

/// The slips of one column of ten rows, beside working it again with each slip in turn
/// ([Reworking]).
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SlipBenchmark {

    private static final long SEED = 20_260_415;
    private static final int CLASS = 40;

    /// Of the pairs, each hundredth first slip is worked again.
    private static final int EVERY = 100;

    /// How many digits the rows have.
    @Param({"10", "5"})
    int digits;

    private final SlipFinder finder = new SlipFinder(Rates.shipped());
    private final List<String> answers = new ArrayList<>();
    private Column column = ColumnPlan.column(List.of(1L));
    private EventTable table = EventTable.of(column);
    private Reworking reworking = new Reworking(List.of(1L));
    private BigDecimal ofOne = BigDecimal.ZERO;
    private BigDecimal ofTwo = BigDecimal.ZERO;
    private int turn;

    /// Draws the column and forty wrong answers to it, and holds both sides to the same answers:
    /// what working again with one slip gives is found by the finder too.
    @Setup
    public void prepare() {
        SplittableRandom chance = new SplittableRandom(SEED);
        List<Long> rows = new ColumnPlan(10, digits).draw(chance);
        column = ColumnPlan.column(rows);
        table = EventTable.of(column);
        reworking = new Reworking(rows);
        long right = table.answer().longValueExact();
        int known = 0;
        for (long answer : reworking.answers()) {
            known += answer == right || table.slipsTo(BigDecimal.valueOf(answer)) > 0 ? 1 : 0;
        }
        if (known < 0.9 * reworking.answers().size()) {
            throw new IllegalStateException(
                    "Of %d answers the finder knows %d."
                            .formatted(reworking.answers().size(), known));
        }
        while (answers.size() < CLASS) {
            Fate fate = Fate.by(Rates.shipped(), chance, Habit.NONE);
            OptionalLong written = ColumnPupil.writes(rows, fate);
            if (written.isPresent() && written.getAsLong() != right) {
                BigDecimal answer = BigDecimal.valueOf(written.getAsLong());
                answers.add(answer.toPlainString());
                boolean single = table.slipsTo(answer) > 0;
                ofOne = single ? answer : ofOne;
                ofTwo = single ? ofTwo : answer;
            }
        }
        System.out.printf(
                "Slips listed: %d, leading to %d answers; worked again: %d, pairs: %d. To %s lead %d"
                        + " and %d, to %s %d pairs in %d first slips%n",
                table.slips(),
                table.answers(),
                reworking.tried(),
                reworking.pairs(),
                ofOne,
                table.slipsTo(ofOne),
                reworking.leadingTo(ofOne.longValueExact()),
                ofTwo,
                reworking.pairsLeadingTo(ofTwo.longValueExact(), 0, 1),
                reworking.tried());
    }

    /// The peer: which single slips lead to an answer, by working the column again with each.
    @Benchmark
    public int singleWorkedAgain() {
        return reworking.leadingTo(ofOne.longValueExact());
    }

    /// The same from the table of the problem, which is made once for all its answers.
    @Benchmark
    public int singleLookedUp() {
        return table.slipsTo(ofOne);
    }

    /// The table itself: all single slips with their differences, weights and places.
    @Benchmark
    public EventTable tableMade() {
        return EventTable.of(column);
    }

    /// The peer: which pairs lead to an answer, by working the column again with one first slip in
    /// a hundred and each second slip after it; the whole takes a hundred times as long.
    @Benchmark
    public int hundredthOfPairsWorkedAgain() {
        turn = (turn + 1) % EVERY;
        return reworking.pairsLeadingTo(ofTwo.longValueExact(), turn, EVERY);
    }

    /// The same from the table: all pairs, bead by bead, and what else may lead to the answer.
    @Benchmark
    public Evidence pairsFound() {
        return SlipFinder.evidence(table, ofTwo.toPlainString()).orElseThrow();
    }

    /// Forty wrong answers to one column, each ranked, the table made anew.
    @Benchmark
    public void classOfForty(Blackhole hole) {
        EventTable made = EventTable.of(column);
        for (String answer : answers) {
            hole.consume(finder.find(made, answer));
        }
    }
}
