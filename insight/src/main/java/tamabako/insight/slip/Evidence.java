package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/// What one answer says about how often each kind of slip is made, before any rates are known.
///
/// The chance of the answer is `P0 * sum(weight * rate of one kind * rate of another) + eps * (1 -
/// P0) * B` with `P0 = exp(-sum(rate * occasions))`; a single slip has no other kind, three at once
/// have two others, and a right answer has `P0` alone. All that [tamabako.insight.pooling] needs is
/// here; making it costs much more than using it.
public final class Evidence {

    private static final SlipKind[] KINDS = SlipKind.values();
    private static final int NO_OTHER = Mixture.NO_OTHER;
    private static final int NONE_KNOWN = SlipKind.NONE_KNOWN.index();

    private final double[] occasions;
    private final Mixture.Part[] parts;
    private final boolean right;
    private final double evenly;

    private Evidence(EventTable table, boolean right, double evenly, Mixture.Part[] parts) {
        this.right = right;
        this.evenly = evenly;
        this.parts = parts;
        this.occasions = new double[KINDS.length];
        for (SlipKind kind : KINDS) {
            occasions[kind.index()] = table.occasions(kind);
        }
    }

    /// Of a right answer.
    static Evidence right(EventTable table) {
        return new Evidence(table, true, 0, new Mixture.Part[0]);
    }

    /// Of a wrong answer.
    static Evidence wrong(Explanations explanations, BigDecimal written) {
        return new Evidence(
                explanations.table(),
                false,
                Background.evenly(written),
                Mixture.of(explanations).parts());
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
        for (Mixture.Part part : parts) {
            sum += nothing * made(part, rates);
        }
        return sum;
    }

    private static double made(Mixture.Part part, Rates rates) {
        double made = part.weight() * rates.ofIndex(part.first());
        if (part.second() != NO_OTHER) {
            made *= rates.ofIndex(part.second());
        }
        return part.third() == NO_OTHER ? made : made * rates.ofIndex(part.third());
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
        for (Mixture.Part part : parts) {
            double share = nothing * made(part, rates) / all;
            slips[part.first()] += share;
            if (part.second() != NO_OTHER) {
                slips[part.second()] += share;
            }
            if (part.third() != NO_OTHER) {
                slips[part.third()] += share;
            }
        }
        slips[NONE_KNOWN] += background / all;
        return Math.log(all);
    }

    /// The `slips` kinds that are likeliest to have been made together; none where no so many lead
    /// to the answer.
    List<SlipKind> likeliest(int slips, Rates rates) {
        return Arrays.stream(parts)
                .filter(part -> part.slips() == slips)
                .max(Comparator.comparingDouble(part -> made(part, rates)))
                .map(part ->
                        IntStream.of(part.first(), part.second(), part.third())
                                .filter(kind -> kind != NO_OTHER)
                                .mapToObj(kind -> KINDS[kind])
                                .toList())
                .orElse(List.of());
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
