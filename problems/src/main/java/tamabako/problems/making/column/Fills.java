package tamabako.problems.making.column;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tamabako.problems.making.draw.Draws;

/// How the places behind the leads can be filled so that each digit stands in the column so many
/// times in all, leads included.
///
/// With `p` places there are as many ways as to choose those of one digit, times the ways to choose
/// those of the next among what is left, and so on through all ten. It does not matter which digits
/// are leads, only how often each is (see [Leads]): so digits are taken in the order of that, the
/// most frequent lead first, and what was counted for one column holds for all that are alike in
/// this.
final class Fills {

    private final int least;
    private final int most;
    private final Map<Key, Rest> known = new HashMap<>();

    /// @param leads how often those digits are leads that are still to be placed
    private record Key(long leads, int places) {}

    Fills(DigitCondition.DigitsEach each) {
        this.least = Math.max(0, each.least());
        this.most = each.most();
    }

    /// The ways to fill so many `places` behind leads of each of `kinds`.
    Fill[] all(List<Long> kinds, int places) {
        BigInteger mostWays =
                kinds.stream()
                        .map(leads -> rest(leads, places).ways())
                        .max(BigInteger::compareTo)
                        .orElse(BigInteger.ZERO);
        return kinds.stream()
                .map(leads -> new Fill(leads, mostWays, rest(leads, places)))
                .toArray(Fill[]::new);
    }

    private Rest rest(long leads, int places) {
        if (leads == 0) {
            return places == 0 ? Rest.FULL : Rest.NEVER;
        }
        Key key = new Key(leads, places);
        Rest rest = known.get(key);
        if (rest == null) {
            rest = find(leads, places);
            known.put(key, rest);
        }
        return rest;
    }

    private Rest find(long leads, int places) {
        int times = Leads.most(leads);
        long others = Leads.without(leads, times);
        int from = Math.max(0, least - times);
        List<BigInteger> ways = new ArrayList<>();
        List<Rest> then = new ArrayList<>();
        for (int count = from; count <= Math.min(most - times, places); count++) {
            Rest rest = rest(others, places - count);
            ways.add(Bags.binomial(places, count).multiply(rest.ways()));
            then.add(rest);
        }
        return then.isEmpty()
                ? Rest.NEVER
                : new Rest(from, Choice.of(ways), then);
    }

    /// The ways to fill so many places behind leads of one kind.
    static final class Fill {

        private final long leads;
        private final BigInteger mostWays;
        private final Choice kept;
        private final Rest rest;

        /// Four bits each: how many digits come before those that are no lead, one lead, and so on.
        private final long before;

        private final int[] order = new int[10];

        private Fill(long leads, BigInteger mostWays, Rest rest) {
            this.leads = leads;
            this.mostWays = mostWays;
            BigInteger ways = rest.ways();
            this.kept = Choice.of(List.of(mostWays.subtract(ways), ways));
            this.rest = rest;
            long sums = 0;
            int sum = 0;
            for (int times = Leads.most(leads); times >= 0; times--) {
                sums |= (long) sum << (4 * times);
                sum += Leads.digits(leads, times);
            }
            this.before = sums;
        }

        /// The kind of leads.
        long leads() {
            return leads;
        }

        /// In how many ways as many places can be filled behind leads of the kind that leaves most.
        BigInteger mostWays() {
            return mostWays;
        }

        /// Whether this time leads of this kind are kept: as often as there are ways to go on from
        /// them, compared with the kind that leaves most.
        boolean isKept(Draws draws) {
            return kept.draw(draws) == 1;
        }

        /// Draws one of the ways; there must be any.
        ///
        /// @param times how often each digit is a lead
        /// @param others gets how often each stands behind the leads
        void draw(Draws draws, int[] times, int[] others) {
            long next = before;
            for (int digit = 0; digit <= 9; digit++) {
                int shift = 4 * times[digit];
                order[(int) (next >>> shift) & 15] = digit;
                next += 1L << shift;
            }
            Rest left = rest;
            for (int i = 0; i < order.length; i += 2) {
                left = left.draw(draws, order[i], order[i + 1], others);
            }
        }
    }
}
