package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tamabako.insight.simulation.ColumnPupil;
import tamabako.insight.simulation.Fate;
import tamabako.insight.simulation.Habit;
import tamabako.problems.Attempt;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

/// The finder weighs the same answers on its own, apart from strands.
class StrandEvidenceTest {

    private static final Rates USUAL = Rates.shipped();

    private static Attempt attempt(Draw draw, Rates rates) {
        SplittableRandom chance = new SplittableRandom(draw.bits());
        while (true) {
            List<BigDecimal> rows = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                rows.add(new BigDecimal(chance.nextInt(10_000, 100_000)));
            }
            List<Long> whole = rows.stream().map(BigDecimal::longValueExact).toList();
            OptionalLong written = ColumnPupil.writes(whole, Fate.by(rates, chance, Habit.NONE));
            if (written.isPresent()) {
                Column column = new Column("1", rows, Terms.PLAIN);
                return Attempt.of(column, Long.toString(written.getAsLong()));
            }
        }
    }

    private static Rates oftenSlipping() {
        return USUAL.with(kind -> Math.min(0.5, 8 * USUAL.of(kind)));
    }

    private static StrandEvidence evidence(Attempt attempt) {
        return StrandEvidence.of(EventTable.of(attempt.problem()), attempt, USUAL).orElseThrow();
    }

    private static double[] ones() {
        double[] ones = new double[Strand.COUNT];
        Arrays.fill(ones, 1);
        return ones;
    }

    @Test
    void underUsualRatesTheSlipsOfEachMoveAreThoseOfTheFinder() {
        forSeeds(
                60,
                draw -> {
                    Attempt attempt = attempt(draw, oftenSlipping());
                    EventTable table = EventTable.of(attempt.problem());
                    Diagnosis diagnosis = new SlipFinder(USUAL).diagnose(table, attempt.answer());
                    double[] slips = new double[Strand.COUNT];
                    evidence(attempt).addSlips(ones(), 1, slips);

                    for (Move move : Move.values()) {
                        assertThat(slips[new Strand.OfMove(move).index()])
                                .isCloseTo(diagnosis.slips().of(move), within(1e-9));
                    }
                });
    }

    @Test
    void aPupilWhoSlipsMoreInAMoveIsWeighedAsTheFinderWeighsByThatPupilsRates() {
        forSeeds(
                60,
                draw -> {
                    Attempt attempt = attempt(draw, oftenSlipping());
                    EventTable table = EventTable.of(attempt.problem());
                    Rates own = USUAL.with(Move.TAKE_TEN_COMPLEMENT, 7).with(Move.ADD_DIRECT, 0.3);
                    // No slip known is left as likely as for usual pupils.
                    double[] factors = ones();
                    factors[new Strand.OfMove(Move.TAKE_TEN_COMPLEMENT).index()] = 7;
                    factors[new Strand.OfMove(Move.ADD_DIRECT).index()] = 0.3;
                    Diagnosis diagnosis = new SlipFinder(own).diagnose(table, attempt.answer());
                    double[] slips = new double[Strand.COUNT];
                    evidence(attempt).addSlips(factors, 1, slips);

                    for (Move move : Move.values()) {
                        assertThat(slips[new Strand.OfMove(move).index()])
                                .isCloseTo(diagnosis.slips().of(move), within(0.02));
                    }
                });
    }

    @Test
    void theCellsOfAMoveHoldAllItsSlips() {
        forSeeds(
                60,
                draw -> {
                    StrandEvidence evidence = evidence(attempt(draw, oftenSlipping()));
                    double[] factors = ones();
                    factors[new Strand.OfMove(Move.ADD_TEN_WITH_FIVE).index()] = 3;
                    double[] strands = new double[Strand.COUNT];
                    double[] cells = new double[Cell.COUNT];
                    evidence.addSlips(factors, 1, strands);
                    evidence.addCells(factors, cells);

                    double inMoves = 0;
                    for (Move move : Move.values()) {
                        inMoves += strands[new Strand.OfMove(move).index()];
                    }
                    assertThat(Arrays.stream(cells).sum()).isCloseTo(inMoves, within(1e-9));
                });
    }

    @Test
    void theDoubtIsTheCurvatureOfTheLogarithmOfTheChance() {
        forSeeds(
                20,
                draw -> {
                    StrandEvidence evidence = evidence(attempt(draw, oftenSlipping()));
                    double[][] information = new double[Strand.COUNT][Strand.COUNT];
                    evidence.takeDoubt(ones(), 1, information);
                    double little = 1e-5;

                    for (int strand = 0; strand < Strand.COUNT; strand++) {
                        double[] more = ones();
                        double[] less = ones();
                        more[strand] = Math.exp(little);
                        less[strand] = Math.exp(-little);
                        double[] above = new double[Strand.COUNT];
                        double[] below = new double[Strand.COUNT];
                        evidence.addSlips(more, 1, above);
                        evidence.addSlips(less, 1, below);
                        for (int other = 0; other < Strand.COUNT; other++) {
                            double slope = (above[other] - below[other]) / (2 * little);
                            assertThat(-information[strand][other]).isCloseTo(slope, within(1e-5));
                        }
                    }
                });
    }

    @Test
    void runningTotalsTellInWhichRowTheSlipWas() {
        List<BigDecimal> rows = List.of(new BigDecimal(48), new BigDecimal(37), new BigDecimal(26));
        Column column = new Column("1", rows, Terms.PLAIN);
        // 48 + 37 = 85 was written as 75: the carry of 8 + 7 was left out, or a bead on the tens.
        Attempt attempt =
                new Attempt(
                        column,
                        "101",
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of("48", "75"));
        EventTable table = EventTable.of(column);
        double[] slips = new double[Strand.COUNT];
        double[] cells = new double[Cell.COUNT];
        StrandEvidence evidence = StrandEvidence.of(table, attempt, USUAL).orElseThrow();
        evidence.addSlips(ones(), 1, slips);
        evidence.addCells(ones(), cells);
        Diagnosis diagnosis = new SlipFinder(USUAL).diagnose(table, attempt);

        for (Move move : Move.values()) {
            assertThat(slips[new Strand.OfMove(move).index()])
                    .as(move.word())
                    .isCloseTo(diagnosis.slips().of(move), within(1e-9));
        }
        // 8 + 7 on the ones; without totals the carry of 5 + 6 would be as likely.
        assertThat(cells[new Cell(8, 7).index()]).isGreaterThan(0.5);
        assertThat(cells[new Cell(5, 6).index()]).isLessThan(0.001);
    }

    @Test
    void theStepsOfTheCellsAreTheStepsOfTheMoves() {
        forSeeds(
                20,
                draw -> {
                    int[] moves = new int[Move.values().length];
                    int[] cells = new int[Cell.COUNT];
                    evidence(attempt(draw, USUAL)).addSteps(moves, cells);

                    assertThat(Arrays.stream(cells).sum()).isEqualTo(Arrays.stream(moves).sum());
                    int byFive =
                            Cell.all().stream()
                                    .filter(cell -> cell.move() == Move.ADD_FIVE_COMPLEMENT)
                                    .mapToInt(cell -> cells[cell.index()])
                                    .sum();
                    assertThat(byFive)
                            .isEqualTo(moves[new Strand.OfMove(Move.ADD_FIVE_COMPLEMENT).index()]);
                });
    }

    @Test
    void anAnswerThatIsNoNumberSaysNothing() {
        Column column =
                new Column("1", List.of(new BigDecimal(54), new BigDecimal(38)), Terms.PLAIN);

        assertThat(StrandEvidence.of(EventTable.of(column), Attempt.of(column, "?"), USUAL))
                .isEmpty();
    }
}
