package tamabako.problems.making;

import java.util.Optional;
import java.util.stream.IntStream;
import tamabako.problems.making.draw.Draws;

/// What each problem of a set is to be: its split, whether it has decimals, and whether it has an
/// inner zero, where a custom says how many do.
///
/// Which problems have decimals or inner zeros is drawn, each choice equally likely; how many have
/// inner zeros as well, each number that the custom allows.
final class Plan {

    private final int all;
    private final Optional<int[]> splits;
    private final boolean[] decimals;
    private final Optional<boolean[]> zeros;

    private Plan(int all, Optional<int[]> splits, boolean[] decimals, Optional<boolean[]> zeros) {
        this.all = all;
        this.splits = splits;
        this.decimals = decimals;
        this.zeros = zeros;
    }

    /// A plan in which `decimals` problems have decimals.
    static Plan draw(Draws draws, Asking asking) {
        int count = asking.count();
        boolean[] decimals = chosen(draws, all(count), asking.decimals(), count);
        Optional<int[]> splits =
                asking.evenSplits() ? Optional.of(dealt(draws, asking)) : Optional.empty();
        Optional<boolean[]> zeros =
                asking.innerZeros().map(range -> zeros(draws, asking, range, splits));
        return new Plan(asking.splits(), splits, decimals, zeros);
    }

    /// Zeros on places whose split, where it is dealt, has a number of three digits or more to hold
    /// one.
    private static boolean[] zeros(
            Draws draws, Asking asking, Custom.InnerZeros range, Optional<int[]> splits) {
        int[] holding =
                splits.map(dealt -> holding(dealt, asking)).orElseGet(() -> all(asking.count()));
        int most = Math.min(range.most(), holding.length);
        int least = Math.min(range.least(), most);
        return chosen(draws, holding, (int) draws.between(least, most), asking.count());
    }

    private static int[] holding(int[] dealt, Asking asking) {
        return IntStream.range(0, dealt.length)
                .filter(place -> asking.mayHaveInnerZero().test(dealt[place]))
                .toArray();
    }

    /// The split of a problem: as it was dealt, or each equally likely at every try.
    int split(Draws draws, int problem) {
        if (all == 1) {
            return 0;
        }
        return splits.map(dealt -> dealt[problem]).orElseGet(() -> (int) draws.below(all));
    }

    boolean hasDecimals(int problem) {
        return decimals[problem];
    }

    /// Whether a problem with an inner zero, or one without, fits at that place of the set.
    boolean fits(int problem, boolean innerZero) {
        return zeros.map(has -> has[problem] == innerZero).orElse(true);
    }

    /// Whole rounds of all splits, then some of them; which ones is drawn too.
    private static int[] dealt(Draws draws, Asking asking) {
        int[] splits = new int[asking.count()];
        if (asking.splits() > 1) {
            int[] order = mixed(draws, asking.splits());
            int[] places = mixed(draws, splits.length);
            for (int i = 0; i < splits.length; i++) {
                splits[places[i]] = order[i % order.length];
            }
        }
        return splits;
    }

    /// `chosen` of `places`, among `count` places.
    private static boolean[] chosen(Draws draws, int[] places, int chosen, int count) {
        boolean[] is = new boolean[count];
        int left = chosen;
        for (int i = 0; i < places.length && left > 0; i++) {
            int there = places.length - i;
            if (left == there || draws.below(there) < left) {
                is[places[i]] = true;
                left--;
            }
        }
        return is;
    }

    private static int[] all(int count) {
        return IntStream.range(0, count).toArray();
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
