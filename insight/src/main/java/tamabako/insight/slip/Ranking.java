package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/// The slips that lead to one wrong answer, weighed and ranked.
final class Ranking {

    private static final SlipKind[] KINDS = SlipKind.values();

    private final Events events;
    private final int[] leading;
    private final double[] chances;
    private final BigDecimal difference;
    private final double background;
    private final double all;

    Ranking(EventTable table, BigDecimal written, Rates rates) {
        this.events = table.events();
        this.leading = table.leadingTo(written);
        this.chances = new double[leading.length];
        this.difference = written.subtract(table.answer());
        double nothingElse = nothingElse(table, rates);
        this.background = rates.of(SlipKind.NONE_KNOWN) * (1 - nothingElse) * even(written);
        double sum = background;
        for (int i = 0; i < leading.length; i++) {
            SlipKind kind = Code.way(events.code(leading[i])).kind();
            chances[i] = nothingElse * rates.of(kind) * events.weight(leading[i]);
            sum += chances[i];
        }
        this.all = sum;
    }

    /// The share of all known slips together.
    double explained() {
        return 1 - unexplained();
    }

    private double unexplained() {
        return leading.length == 0 ? 1 : background / all;
    }

    /// The kinds, likeliest first, each at its likeliest place.
    List<Slip> slips() {
        List<Slip> slips = new ArrayList<>();
        for (SlipKind kind : KINDS) {
            if (kind != SlipKind.NONE_KNOWN) {
                addKind(kind, slips);
            }
        }
        slips.add(noneKnown(difference, unexplained()));
        slips.sort(Comparator.comparingDouble(Slip::share).reversed());
        return slips.subList(0, Math.min(slips.size(), Finding.MOST_SLIPS));
    }

    private static Slip noneKnown(BigDecimal difference, double share) {
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

    /// The chance of `written` among all answers of its length.
    private static double even(BigDecimal written) {
        int digits = Math.max(written.precision(), written.scale() + 1);
        return digits == 1 ? 0.1 : 1 / (9 * Math.pow(10, digits - 1.0));
    }

    private static double nothingElse(EventTable table, Rates rates) {
        double expected = 0;
        for (SlipKind kind : KINDS) {
            expected += rates.of(kind) * table.occasions(kind);
        }
        return Math.exp(-expected);
    }

    private void addKind(SlipKind kind, List<Slip> slips) {
        double share = 0;
        int best = -1;
        double bestPlace = 0;
        for (int i = 0; i < leading.length; i++) {
            if (Code.way(events.code(leading[i])).kind() != kind) {
                continue;
            }
            share += chances[i];
            double place = chanceOfPlace(kind, Code.place(events.code(leading[i])));
            if (best < 0
                    || place > bestPlace
                    || (place == bestPlace && chances[i] > chances[best])) {
                best = i;
                bestPlace = place;
            }
        }
        if (best >= 0) {
            slips.add(slip(kind, share / all, bestPlace / all, events.code(leading[best])));
        }
    }

    private double chanceOfPlace(SlipKind kind, long place) {
        double chance = 0;
        for (int i = 0; i < leading.length; i++) {
            long code = events.code(leading[i]);
            if (Code.way(code).kind() == kind && Code.place(code) == place) {
                chance += chances[i];
            }
        }
        return chance;
    }

    private Slip slip(SlipKind kind, double share, double hereShare, long code) {
        return new Slip(
                kind,
                share,
                hereShare,
                Code.way(code),
                Code.where(code),
                Code.rod(code),
                Code.digits(code),
                difference);
    }
}
