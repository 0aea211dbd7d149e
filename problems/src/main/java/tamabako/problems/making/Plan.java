package tamabako.problems.making;

import java.util.Optional;
import tamabako.problems.making.draw.Draws;

/// What each problem of a set is to be: its split, whether it has decimals, and whether it has an
/// inner zero, where a custom says how many do.
///
/// Which problems have decimals or inner zeros is drawn, each choice equally likely; how many have
/// inner zeros as well, each number that the custom allows.
final class Plan {

    private final int[] splits;
    private final boolean[] decimals;
    private final Optional<boolean[]> zeros;

    private Plan(int[] splits, boolean[] decimals, Optional<boolean[]> zeros) {
        this.splits = splits;
        this.decimals = decimals;
        this.zeros = zeros;
    }

    /// A plan in which `decimals` problems have decimals.
    static Plan draw(Draws draws, Asking asking) {
        int count = asking.count();
        boolean[] decimals = chosen(draws, count, asking.decimals());
        Optional<boolean[]> zeros =
                asking.innerZeros()
                        .map(range ->
                                chosen(
                                        draws,
                                        count,
                                        (int)
                                                draws.between(
                                                        range.least(),
                                                        Math.min(range.most(), count))));
        return new Plan(splits(draws, asking), decimals, zeros);
    }

    int split(int problem) {
        return splits[problem];
    }

    boolean hasDecimals(int problem) {
        return decimals[problem];
    }

    /// Whether a problem with an inner zero, or one without, fits at that place of the set.
    boolean fits(int problem, boolean innerZero) {
        return zeros.map(has -> has[problem] == innerZero).orElse(true);
    }

    private static int[] splits(Draws draws, Asking asking) {
        int[] splits = new int[asking.count()];
        if (asking.splits() == 1) {
            return splits;
        }
        if (!asking.evenSplits()) {
            for (int i = 0; i < splits.length; i++) {
                splits[i] = (int) draws.below(asking.splits());
            }
            return splits;
        }
        // Whole rounds of all splits, then some of them; which ones is drawn too.
        int[] order = mixed(draws, asking.splits());
        int[] places = mixed(draws, splits.length);
        for (int i = 0; i < splits.length; i++) {
            splits[places[i]] = order[i % order.length];
        }
        return splits;
    }

    private static boolean[] chosen(Draws draws, int count, int chosen) {
        boolean[] is = new boolean[count];
        int left = chosen;
        for (int i = 0; i < count && left > 0; i++) {
            if (left == count - i || draws.below(count - i) < left) {
                is[i] = true;
                left--;
            }
        }
        return is;
    }

    private static int[] mixed(Draws draws, int count) {
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            int j = (int) draws.below(i + 1);
            order[i] = order[j];
            order[j] = i;
        }
        return order;
    }
}
