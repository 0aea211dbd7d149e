package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Optional;
import tamabako.problems.Attempt;

/// What one answer says about the strands of a pupil's work, before it is known how far the pupil
/// differs from the usual.
///
/// Let `f` be how many times as often as usual the pupil slips, by strand. Then the chance of the
/// answer is `exp(-sum(expected * f))`, times a sum of terms for a wrong one: each term is a weight
/// times the `f` of the strand that one slip was in, or of the two strands of two slips. That no
/// known slip stands behind it is a term as well. Strands are given by their [Strand#index()].
public final class StrandEvidence {

    private static final int NONE_KNOWN = new Strand.OfKind(SlipKind.NONE_KNOWN).index();

    private final double[] expected;
    private final SlipTerms terms;
    private final CellShares cells;
    private final double worth;
    private final int[] movesMade;
    private final int[] cellsMet;

    private StrandEvidence(
            double[] expected, SlipTerms terms, CellShares cells, double worth, EventTable table) {
        this.expected = expected;
        this.terms = terms;
        this.cells = cells;
        this.worth = worth;
        this.movesMade = table.steps();
        this.cellsMet = table.cells();
    }

    /// Of an attempt at the problem of `table`; empty if the answer is no number, for then it says
    /// nothing.
    ///
    /// @param usual how often pupils slip who are like any other
    public static Optional<StrandEvidence> of(EventTable table, Attempt attempt, Rates usual) {
        return SlipFinder.number(table, attempt.answer())
                .map(read ->
                        new SlipFinder(usual)
                                .parts(table, attempt)
                                .map(parts -> of(table, parts, usual))
                                .orElseGet(() -> of(table, read, usual)));
    }

    /// With running totals each slip that is found counts by itself; which go together is not
    /// asked.
    private static StrandEvidence of(EventTable table, Weighed parts, Rates usual) {
        SlipTerms.Adding terms = new SlipTerms.Adding();
        CellShares.Adding cells = new CellShares.Adding();
        double slips = parts.unexplained();
        terms.single(NONE_KNOWN, parts.unexplained());
        for (int i = 0; i < parts.size(); i++) {
            int strand = Slot.strand(Slot.of(parts.code(i)));
            terms.single(strand, parts.made(i));
            cells.alone(parts.code(i), strand, parts.made(i));
            slips += parts.made(i);
        }
        return new StrandEvidence(
                expected(table, usual), terms.terms(), cells.shares(), slips, table);
    }

    private static StrandEvidence of(EventTable table, BigDecimal read, Rates usual) {
        double[] expected = expected(table, usual);
        if (read.compareTo(table.answer()) == 0) {
            return new StrandEvidence(expected, SlipTerms.NONE, CellShares.NONE, 1, table);
        }
        Explanations explanations = Explanations.of(table, read);
        StrandMatrix matrix = new StrandMatrix(explanations, usual);
        double nothing = table.nothing(usual);
        double evenly = Background.evenly(read) * (1 - nothing) / nothing;
        matrix.alone(NONE_KNOWN, usual.of(SlipKind.NONE_KNOWN) * evenly);
        return new StrandEvidence(expected, matrix.terms(), matrix.cells(), 1, table);
    }

    /// How many slips in each strand are expected of a usual pupil who works the problem of
    /// `table`.
    public static double[] expected(EventTable table, Rates usual) {
        double[] expected = new double[Strand.COUNT];
        double[] occasions = table.occasions();
        for (int slot = 0; slot < Slot.COUNT; slot++) {
            if (occasions[slot] > 0) {
                expected[Slot.strand(slot)] += occasions[slot] * usual.ofSlot(slot);
            }
        }
        expected[NONE_KNOWN] = usual.of(SlipKind.NONE_KNOWN) * (1 - table.nothing(usual));
        return expected;
    }

    /// Whether the answer is right.
    public boolean right() {
        return terms.isEmpty();
    }

    /// How many slips in `strand` are expected of a usual pupil.
    public double expected(int strand) {
        return expected[strand];
    }

    /// Adds how many steps the problem takes: to `moves` by [Strand#index()], to `cells` by
    /// [Cell#index()].
    public void addSteps(int[] moves, int[] cells) {
        for (int i = 0; i < moves.length; i++) {
            moves[i] += movesMade[i];
        }
        for (int i = 0; i < cells.length; i++) {
            cells[i] += cellsMet[i];
        }
    }

    /// Adds to `slips` how many slips of each strand the answer shows, `times` times.
    ///
    /// @param factors how many times as often as usual the pupil slips, by strand
    public void addSlips(double[] factors, double times, double[] slips) {
        terms.addSlips(factors, worth * times, slips);
    }

    /// Takes from `information` what remains open because it is not known which slip was made: the
    /// covariances of the numbers of slips by strand, `times` times.
    public void takeDoubt(double[] factors, double times, double[][] information) {
        terms.takeDoubt(factors, worth * times, information);
    }

    /// Adds to `slips`, by [Cell#index()], how many slips the answer shows in each.
    public void addCells(double[] factors, double[] slips) {
        cells.add(factors, worth, terms, slips);
    }
}
