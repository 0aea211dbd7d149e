package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/// The slips that lead to one wrong answer, ranked by kind.
final class Ranking {

    private static final SlipKind[] KINDS = SlipKind.values();
    private static final int KIND_SHIFT = 28;

    /// Shares that differ by less are the same but for rounding; so the order does not depend on
    /// the order of additions.
    private static final double ROUNDED = 1e-12;

    private final Weighed weighing;
    private final int places;
    private final BigDecimal difference;
    private final long[] spots;
    private final double[] ofSpots;

    /// @param places how many decimal places the tenths are
    /// @param difference by how much the answer is off
    Ranking(Weighed weighing, int places, BigDecimal difference) {
        this.weighing = weighing;
        this.places = places;
        this.difference = difference;
        this.spots = new long[weighing.size()];
        Arrays.setAll(spots, this::spot);
        Arrays.sort(spots);
        this.ofSpots = new double[spots.length];
        for (int i = 0; i < weighing.size(); i++) {
            ofSpots[Arrays.binarySearch(spots, spot(i))] += weighing.share(i);
        }
    }

    /// Kind and place of entry `i`.
    private long spot(int i) {
        long code = weighing.code(i);
        return (long) Code.way(code).kind().index() << KIND_SHIFT | Code.place(code);
    }

    /// The kinds, likeliest first, each at its likeliest place.
    List<Slip> slips() {
        double[] shares = new double[KINDS.length];
        int[] best = new int[KINDS.length];
        Arrays.fill(best, -1);
        for (int i = 0; i < weighing.size(); i++) {
            int kind = Code.way(weighing.code(i)).kind().index();
            shares[kind] += weighing.share(i);
            if (best[kind] < 0 || isLikelier(i, best[kind])) {
                best[kind] = i;
            }
        }
        List<Slip> slips = new ArrayList<>();
        for (SlipKind kind : KINDS) {
            if (best[kind.index()] >= 0) {
                slips.add(slip(kind, shares[kind.index()], best[kind.index()]));
            }
        }
        slips.add(noneKnown());
        slips.sort(Comparator.comparingLong(slip -> -Math.round(slip.share() / ROUNDED)));
        return slips.subList(0, Math.min(slips.size(), Finding.MOST_SLIPS));
    }

    private boolean isLikelier(int i, int than) {
        double here = ofSpot(i);
        double there = ofSpot(than);
        return here > there + ROUNDED
                || (here > there - ROUNDED && weighing.share(i) > weighing.share(than) + ROUNDED);
    }

    private double ofSpot(int i) {
        return ofSpots[Arrays.binarySearch(spots, spot(i))];
    }

    private Slip noneKnown() {
        double share = weighing.unexplained();
        return new Slip(
                SlipKind.NONE_KNOWN,
                share,
                share,
                Way.NONE_KNOWN,
                new Where.Answer(),
                OptionalInt.empty(),
                List.of(),
                difference);
    }

    private Slip slip(SlipKind kind, double share, int i) {
        long code = weighing.code(i);
        BigDecimal off = BigDecimal.valueOf(weighing.tenths(i), places).stripTrailingZeros();
        return new Slip(
                kind,
                share,
                ofSpot(i),
                Code.way(code),
                Code.where(code),
                Code.rod(code),
                Code.digits(code),
                off.scale() < 0 ? off.setScale(0) : off);
    }
}
