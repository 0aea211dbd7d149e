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
import tamabako.insight.slip.Finding;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipFinder;
import tamabako.insight.slip.SlipKind;
import tamabako.problems.Column;

/// The slips of columns of ten rows, beside working them again with each slip in turn
/// ([Reworking]).
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SlipBenchmark {

    private static final long SEED = 20_260_415;
    private static final int CLASS = 40;
    private static final int PROBLEMS = 64;

    /// Of the pairs, each hundredth first slip is worked again.
    private static final int EVERY = 100;

    /// A column, an answer to it that one slip leads to, and one that it takes two for.
    private record Case(Column column, BigDecimal ofOne, BigDecimal ofTwo, Reworking reworking) {}

    /// How many digits the rows have.
    @Param({"10", "5", "3"})
    int digits;

    private final SlipFinder finder = new SlipFinder(Rates.shipped());
    private final SplittableRandom chance = new SplittableRandom(SEED);
    private final List<Case> cases = new ArrayList<>();
    private final List<EventTable> tables = new ArrayList<>();
    private final List<String> answers = new ArrayList<>();
    private int turn;

    /// Draws the columns and wrong answers to them, and holds both sides to the same answers: what
    /// working again with one slip gives is found by the finder too.
    @Setup
    public void prepare() {
        while (cases.size() < PROBLEMS) {
            List<Long> rows = new ColumnPlan(10, digits).draw(chance);
            Column column = ColumnPlan.column(rows);
            EventTable table = EventTable.of(column);
            Reworking reworking = new Reworking(rows);
            compare(column, table, reworking);
            List<BigDecimal> ofOne = new ArrayList<>();
            List<BigDecimal> ofTwo = new ArrayList<>();
            while (ofOne.isEmpty() || ofTwo.isEmpty()) {
                BigDecimal answer = wrong(rows, table);
                (table.slipsTo(answer) > 0 ? ofOne : ofTwo).add(answer);
            }
            cases.add(new Case(column, ofOne.getFirst(), ofTwo.getFirst(), reworking));
            tables.add(table);
        }
        List<Long> rows =
                cases.getFirst().column().rows().stream().map(BigDecimal::longValue).toList();
        while (answers.size() < CLASS) {
            answers.add(wrong(rows, tables.getFirst()).toPlainString());
        }
        print(cases.getFirst(), tables.getFirst());
    }

    private BigDecimal wrong(List<Long> rows, EventTable table) {
        while (true) {
            OptionalLong written =
                    ColumnPupil.writes(rows, Fate.by(Rates.shipped(), chance, Habit.NONE));
            if (written.isPresent() && written.getAsLong() != table.answer().longValueExact()) {
                return BigDecimal.valueOf(written.getAsLong());
            }
        }
    }

    private static void compare(Column column, EventTable table, Reworking reworking) {
        int known = 0;
        if (table.answers() == 0) {
            throw new IllegalStateException("No slips are listed.");
        }
        for (long answer : reworking.answers()) {
            BigDecimal written = BigDecimal.valueOf(answer);
            int fresh = EventTable.of(column).slipsTo(written);
            if (table.slipsTo(written) != fresh) {
                throw new IllegalStateException("Not the same slips lead to %d.".formatted(answer));
            }
            known += fresh > 0 || written.compareTo(table.answer()) == 0 ? 1 : 0;
        }
        if (known < 0.9 * reworking.answers().size()) {
            throw new IllegalStateException(
                    "Of %d answers the finder knows %d."
                            .formatted(reworking.answers().size(), known));
        }
    }

    private static void print(Case first, EventTable table) {
        System.out.printf(
                "Slips listed: %d, leading to %d answers; worked again: %d, pairs: %d. To %s lead %d"
                        + " and %d, to %s %d pairs in %d first slips%n",
                table.slips(),
                table.answers(),
                first.reworking().tried(),
                first.reworking().pairs(),
                first.ofOne(),
                table.slipsTo(first.ofOne()),
                first.reworking().leadingTo(first.ofOne().longValueExact()),
                first.ofTwo(),
                first.reworking().pairsLeadingTo(first.ofTwo().longValueExact(), 0, 1),
                first.reworking().tried());
    }

    private int turn() {
        turn = (turn + 1) % PROBLEMS;
        return turn;
    }

    /// The peer: which single slips lead to an answer, by working the column again with each.
    @Benchmark
    public int singleWorkedAgain() {
        Case next = cases.get(turn());
        return next.reworking().leadingTo(next.ofOne().longValueExact());
    }

    /// The same for a problem that was never met before, from its rows and the answer.
    @Benchmark
    public int singleFound() {
        Case next = cases.get(turn());
        return EventTable.of(next.column()).slipsTo(next.ofOne());
    }

    /// The same from the problem's list of all slips, which is made once for all its answers.
    @Benchmark
    public int singleLookedUp() {
        int next = turn();
        return tables.get(next).slipsTo(cases.get(next).ofOne());
    }

    /// What a right answer to such a problem tells: the occasions for each kind of slip.
    @Benchmark
    public double occasionsCounted() {
        return EventTable.of(cases.get(turn()).column()).occasions(SlipKind.ONE_BEAD);
    }

    /// All single slips with their differences, weights and places.
    @Benchmark
    public int allListed() {
        return EventTable.of(cases.get(turn()).column()).slips();
    }

    /// The slips behind one answer to such a problem, ranked, with whatever that takes.
    @Benchmark
    public Finding oneRanked() {
        Case next = cases.get(turn());
        return finder.find(next.column(), next.ofOne().toPlainString());
    }

    /// The table itself: all single slips, sorted by the answers that they lead to.
    @Benchmark
    public int tableMade() {
        return EventTable.of(cases.get(turn()).column()).answers();
    }

    /// The peer: which pairs lead to an answer, by working the column again with one first slip in
    /// a hundred and each second slip after it; the whole takes a hundred times as long.
    @Benchmark
    public int hundredthOfPairsWorkedAgain() {
        int next = turn();
        long written = cases.get(next).ofTwo().longValueExact();
        return cases.get(next).reworking().pairsLeadingTo(written, next, EVERY);
    }

    /// The same from the table: all pairs, bead by bead, and what else may lead to the answer.
    @Benchmark
    public Evidence pairsFound() {
        int next = turn();
        String written = cases.get(next).ofTwo().toPlainString();
        return SlipFinder.evidence(tables.get(next), written).orElseThrow();
    }

    /// Forty wrong answers to one column, each ranked, the table made anew.
    @Benchmark
    public void classOfForty(Blackhole hole) {
        EventTable made = EventTable.of(cases.getFirst().column());
        for (String answer : answers) {
            hole.consume(finder.find(made, answer));
        }
    }
}
