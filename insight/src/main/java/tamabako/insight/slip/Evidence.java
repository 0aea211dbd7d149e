package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/// What one answer says about how often each kind of slip is made, before any rates are known.
///
/// The chance of the answer is `P0 * sum(weight * rate of one kind * rate of another) + eps * (1 -
/// P0) * B` with `P0 = exp(-sum(rate * occasions))`; a single slip has no other kind, and a right
/// answer has `P0` alone. All that [tamabako.insight.pooling] needs is here; making it costs much
/// more than using it.
public final class Evidence {

    private static final SlipKind[] KINDS = SlipKind.values();
    private static final int NO_OTHER = KINDS.length;
    private static final int NONE_KNOWN = SlipKind.NONE_KNOWN.index();

    private final double[] occasions;
    private final int[] first;
    private final int[] second;
    private final double[] weights;
    private final boolean right;
    private final double evenly;

    private Evidence(EventTable table, boolean right, double evenly, double[][] matrix) {
        this.right = right;
        this.evenly = evenly;
        this.occasions = new double[KINDS.length];
        for (SlipKind kind : KINDS) {
            occasions[kind.index()] = table.occasions(kind);
        }
        int size = 0;
        for (double[] row : matrix) {
            size += (int) Arrays.stream(row).filter(weight -> weight > 0).count();
        }
        this.first = new int[size];
        this.second = new int[size];
        this.weights = new double[size];
        fill(matrix);
    }

    private void fill(double[][] matrix) {
        int filled = 0;
        for (int kind = 0; kind < matrix.length; kind++) {
            for (int other = 0; other <= NO_OTHER; other++) {
                if (matrix[kind][other] > 0) {
                    first[filled] = kind;
                    second[filled] = other;
                    weights[filled++] = matrix[kind][other];
                }
            }
        }
    }

    /// Of a right answer.
    static Evidence right(EventTable table) {
        return new Evidence(table, true, 0, new double[0][0]);
    }

    /// Of a wrong answer.
    static Evidence wrong(Explanations explanations, BigDecimal written) {
        return new Evidence(
                explanations.table(), false, Background.evenly(written), matrix(explanations));
    }

    private static double[][] matrix(Explanations explanations) {
        EventTable table = explanations.table();
        double[][] matrix = new double[KINDS.length][NO_OTHER + 1];
        int alone = explanations.alone();
        if (alone >= 0) {
            double[] kinds = kinds(table, alone, table.end(alone));
            for (int kind = 0; kind < NO_OTHER; kind++) {
                matrix[kind][NO_OTHER] += kinds[kind];
            }
        }
        for (int i = 0; i < explanations.pairs(); i++) {
            int low = explanations.low(i);
            int high = explanations.high(i);
            double[] ofLow = kinds(table, low, table.endOfWork(low));
            double[] ofHigh = low == high ? ofLow : kinds(table, high, table.endOfWork(high));
            addPairs(matrix, ofLow, ofHigh, low == high ? 0.5 : 1);
        }
        for (int i = 0; i < explanations.pencils(); i++) {
            int before = explanations.before(i);
            double[] pencil = new double[NO_OTHER];
            pencil[Code.way(explanations.pencil(i)).kind().index()] = explanations.pencilWeight(i);
            addPairs(matrix, kinds(table, before, table.endOfWork(before)), pencil, 1);
        }
        return matrix;
    }

    private static void addPairs(double[][] matrix, double[] some, double[] others, double times) {
        for (int one = 0; one < NO_OTHER; one++) {
            for (int other = 0; other < NO_OTHER && some[one] > 0; other++) {
                double weight = times * some[one] * others[other];
                matrix[Math.min(one, other)][Math.max(one, other)] += weight;
            }
        }
    }

    private static double[] kinds(EventTable table, int group, int end) {
        double[] kinds = new double[NO_OTHER];
        for (int place = table.start(group); place < end; place++) {
            kinds[Slot.kindIndex(table.slot(place))] += table.events().weight(table.at(place));
        }
        return kinds;
    }

    /// Whether the answer is right.
    public boolean right() {
        return right;
    }

    /// How many occasions the problem gave for `kind`.
    public double occasions(SlipKind kind) {
        return occasions[kind.index()];
    }

    /// The chance of the answer under `rates`.
    public double chance(Rates rates) {
        double nothing = nothing(rates);
        return right ? nothing : known(rates, nothing) + background(rates, nothing);
    }

    /// The chance that any slip is made in this problem.
    public double chanceOfWrong(Rates rates) {
        return 1 - nothing(rates);
    }

    private double nothing(Rates rates) {
        double expected = 0;
        for (int kind = 0; kind < NO_OTHER; kind++) {
            expected += occasions[kind] * rates.ofIndex(kind);
        }
        return Math.exp(-expected);
    }

    private double known(Rates rates, double nothing) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += nothing * made(i, rates);
        }
        return sum;
    }

    private double made(int i, Rates rates) {
        double one = weights[i] * rates.ofIndex(first[i]);
        return second[i] == NO_OTHER ? one : one * rates.ofIndex(second[i]);
    }

    private double background(Rates rates, double nothing) {
        return rates.of(SlipKind.NONE_KNOWN) * (1 - nothing) * evenly;
    }

    /// Adds to `slips` how many slips of each kind this answer shows under `rates`; the answer
    /// itself where none is known. Gives the natural logarithm of its chance.
    private double addSlips(Rates rates, double[] slips) {
        double nothing = nothing(rates);
        if (right) {
            return Math.log(nothing);
        }
        double background = background(rates, nothing);
        double all = known(rates, nothing) + background;
        for (int i = 0; i < weights.length; i++) {
            double share = nothing * made(i, rates) / all;
            slips[first[i]] += share;
            if (second[i] != NO_OTHER) {
                slips[second[i]] += share;
            }
        }
        slips[NONE_KNOWN] += background / all;
        return Math.log(all);
    }

    /// The two kinds that are likeliest to have been made together, each with the share that this
    /// pair alone has among all pairs; empty where no two lead to the answer.
    Optional<Finding.Two> likeliestTwo(Rates rates) {
        double both = 0;
        int best = -1;
        for (int i = 0; i < weights.length; i++) {
            if (second[i] != NO_OTHER) {
                both += made(i, rates);
                best = best < 0 || made(i, rates) > made(best, rates) ? i : best;
            }
        }
        return best < 0
                ? Optional.empty()
                : Optional.of(
                        new Finding.Two(
                                KINDS[first[best]], KINDS[second[best]], made(best, rates) / both));
    }

    /// How many slips of each kind many answers show, and how likely they all are.
    ///
    /// @param slips by kind, [SlipKind#NONE_KNOWN] too; no moves
    /// @param occasions by kind; for [SlipKind#NONE_KNOWN] how many wrong answers are expected
    /// @param logChance the natural logarithm of the chance of all answers together
    public record Sum(Counts slips, Counts occasions, double logChance) {}

    /// What `answers` show together under `rates`.
    public static Sum sum(List<Evidence> answers, Rates rates) {
        double[] slips = new double[KINDS.length];
        double[] occasions = new double[KINDS.length];
        double logChance = 0;
        for (Evidence answer : answers) {
            logChance += answer.addSlips(rates, slips);
            for (int kind = 0; kind < NO_OTHER; kind++) {
                occasions[kind] += answer.occasions[kind];
            }
            occasions[NONE_KNOWN] += 1 - answer.nothing(rates);
        }
        double[] noMoves = new double[Move.values().length];
        return new Sum(new Counts(slips, noMoves), new Counts(occasions, noMoves), logChance);
    }
}
