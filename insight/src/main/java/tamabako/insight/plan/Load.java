package tamabako.insight.plan;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import tamabako.insight.pooling.Manner;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;
import tamabako.insight.slip.Strand;
import tamabako.insight.slip.StrandEvidence;

/// What one problem of a sort holds, in the mean.
///
/// Arrays are by [Strand#index()], first for work on the frame, then for work in the head, of which
/// a pupil's slips are others.
///
/// @param expected the slips that a usual pupil is expected to make
/// @param times how often each strand is met that practice tells in
/// @param seconds how long it takes a usual pupil
public record Load(List<Double> expected, List<Double> times, double seconds) {

    /// How long the arrays are.
    public static final int SIZE = Strand.COUNT * Manner.values().length;

    private static final int NONE_KNOWN = new Strand.OfKind(SlipKind.NONE_KNOWN).index();

    /// Slips of eye, ear and pencil: they are taken not to become fewer by any problem more than by
    /// another, so that no practice is chosen for them.
    private static final Set<SlipKind> OF_ATTENTION =
            Collections.unmodifiableSet(
                    EnumSet.of(
                            SlipKind.ROW_ON_NEIGHBOUR_ROD,
                            SlipKind.DIGIT_MISREAD,
                            SlipKind.DIGIT_SKIPPED,
                            SlipKind.ROW_SKIPPED,
                            SlipKind.ROW_TWICE,
                            SlipKind.DIGITS_SWAPPED_READING,
                            SlipKind.LINE_JUMP,
                            SlipKind.WRITTEN_DIGIT,
                            SlipKind.WRITTEN_SWAPPED,
                            SlipKind.WRITTEN_LENGTH,
                            SlipKind.DIGIT_MISHEARD,
                            SlipKind.PLACE_MISHEARD,
                            SlipKind.NONE_KNOWN));

    public Load {
        expected = List.copyOf(expected);
        times = List.copyOf(times);
    }

    /// Where the strands of a manner begin.
    static int from(Manner manner) {
        return switch (manner) {
            case FRAME -> 0;
            case MIND -> Strand.COUNT;
        };
    }

    /// The mean of problems, given by their tables, that take so long together.
    public static Load of(Collection<EventTable> tables, double seconds) {
        double[] expected = new double[SIZE];
        double[] times = new double[SIZE];
        for (EventTable table : tables) {
            Manner manner = Manner.of(table.problem());
            int from = from(manner);
            double[] one = StrandEvidence.expected(table, manner.shipped());
            for (int strand = 0; strand < Strand.COUNT; strand++) {
                expected[from + strand] += strand == NONE_KNOWN ? 0 : one[strand] / tables.size();
            }
            for (Move move : Move.values()) {
                times[from + new Strand.OfMove(move).index()] +=
                        (double) table.steps(move) / tables.size();
            }
            for (SlipKind kind : SlipKind.values()) {
                int strand = new Strand.OfKind(kind).index();
                times[from + strand] +=
                        OF_ATTENTION.contains(kind) ? 0 : table.occasions(kind) / tables.size();
            }
        }
        return new Load(list(expected), list(times), seconds / tables.size());
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    /// The slips that a pupil with these factors is expected to make.
    ///
    /// @param factors how many times as often as usual
    public double slips(double[] factors) {
        double sum = 0;
        for (int strand = 0; strand < factors.length; strand++) {
            sum += expected.get(strand) * factors[strand];
        }
        return sum;
    }

    /// The chance that a pupil with these factors gets it right.
    public double right(double[] factors) {
        return Math.exp(-slips(factors));
    }
}
