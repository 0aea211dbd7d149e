package tamabako.problems.pad;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import tamabako.problems.Column;
import tamabako.problems.Pad;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// Makes pads and the problems that are worked from them.
///
/// Every length of an amount is equally likely, and every amount of that length. An amount is
/// unlike those of its leaf, and unlike those of its line that may come in the same problem, where
/// there are enough different ones; common practice, no published source. The problems take all
/// lines equally often, from leaves that are equally likely; no two are alike.
public final class PadMaker {

    private static final int MOST_LINES = 20;
    private static final int MOST_LEAVES = 200;
    private static final int MOST_SPAN = 100;
    private static final int MOST_DIGITS = 12;

    private final PadWish wish;
    private final Draws draws;

    private PadMaker(PadWish wish, long seed) {
        this.wish = wish;
        this.draws = new Draws(seed);
    }

    /// A pad to `wish` and `count` problems from it, drawn from `seed`: the same wish, count and
    /// seed give the same pad and problems on every machine.
    public static PadMade make(PadWish wish, int count, long seed) {
        Optional<PadMade> broken = broken(wish, count);
        return broken.orElseGet(() -> new PadMaker(wish, seed).make(count, seed));
    }

    private static Optional<PadMade> broken(PadWish wish, int count) {
        Optional<Reason> size = size(wish);
        if (size.isPresent()) {
            PadWish near = clamped(wish);
            boolean works = broken(near, count).isEmpty();
            return size.map(reason ->
                    new PadMade.Impossible(
                            wish, reason, works ? Optional.of(near) : Optional.empty()));
        }
        Optional<Reason> few =
                count > wish.problems()
                        ? Optional.of(new Reason.OnlySoMany(count, wish.problems()))
                        : Part.COUNT.range(count, 1, MOST_LINES * MOST_LEAVES);
        return few.map(reason -> new PadMade.Impossible(wish, reason, longer(wish, count)));
    }

    private static Optional<Reason> size(PadWish wish) {
        int least = wish.digits().least();
        return Part.LINES
                .range(wish.lines(), 1, MOST_LINES)
                .or(() -> Part.SPAN.range(wish.span(), 2, MOST_SPAN))
                .or(() -> Part.LEAVES.range(wish.leaves(), wish.span(), MOST_LEAVES))
                .or(() -> Part.LEAST_DIGITS.range(least, 1, MOST_DIGITS))
                .or(() -> Part.MOST_DIGITS.range(wish.digits().most(), least, MOST_DIGITS));
    }

    private static PadWish clamped(PadWish wish) {
        int span = Math.clamp(wish.span(), 2, MOST_SPAN);
        return new PadWish(
                Math.clamp(wish.lines(), 1, MOST_LINES),
                Math.clamp(wish.leaves(), span, MOST_LEAVES),
                span,
                wish.digits().within(1, MOST_DIGITS),
                wish.unit());
    }

    /// The shortest longer pad that has so many problems, if there is one.
    private static Optional<PadWish> longer(PadWish wish, int count) {
        int leaves = wish.span() - 1 + Math.ceilDiv(Math.max(1, count), wish.lines());
        return leaves > wish.leaves() && leaves <= MOST_LEAVES
                ? Optional.of(wish.withLeaves(leaves))
                : Optional.empty();
    }

    private PadMade make(int count, long seed) {
        Pad pad = pad();
        List<Problem> problems = new ArrayList<>(count);
        for (PadLine line : lines(count)) {
            problems.add(
                    new Column(
                            Integer.toString(problems.size() + 1),
                            pad.rows(line),
                            wish.terms().withTold(line)));
        }
        return new PadMade.Found(pad, problems, seed);
    }

    private Pad pad() {
        List<List<BigDecimal>> leaves = new ArrayList<>();
        for (int leaf = 0; leaf < wish.leaves(); leaf++) {
            List<BigDecimal> amounts = new ArrayList<>();
            for (int line = 0; line < wish.lines(); line++) {
                int at = line;
                int near = Math.max(0, leaf - wish.span() + 1);
                amounts.add(
                        amount(drawn ->
                                amounts.contains(drawn)
                                        || leaves.subList(near, leaves.size()).stream()
                                                .anyMatch(
                                                        one -> one.get(at).compareTo(drawn) == 0)));
            }
            leaves.add(amounts);
        }
        return new Pad(leaves);
    }

    private BigDecimal amount(Predicate<BigDecimal> alike) {
        BigDecimal drawn = drawn();
        while (hasEnough() && alike.test(drawn)) {
            drawn = drawn();
        }
        return drawn;
    }

    private BigDecimal drawn() {
        int digits = (int) draws.between(wish.digits().least(), wish.digits().most());
        return BigDecimal.valueOf(draws.between(Powers.of(digits - 1), Powers.of(digits) - 1));
    }

    /// Whether there are more different amounts than one must be unlike.
    private boolean hasEnough() {
        long there = Powers.of(wish.digits().most()) - Powers.of(wish.digits().least() - 1);
        return there >= wish.lines() + wish.span();
    }

    /// As many lines as problems, every line of the leaf once a round.
    private List<PadLine> lines(int count) {
        List<List<PadLine>> left =
                IntStream.rangeClosed(1, wish.lines()).mapToObj(this::starts).toList();
        List<PadLine> chosen = new ArrayList<>(count);
        while (chosen.size() < count) {
            List<PadLine> ofLine = left.get(chosen.size() % wish.lines());
            chosen.add(ofLine.remove((int) draws.below(ofLine.size())));
        }
        return chosen;
    }

    private List<PadLine> starts(int line) {
        List<PadLine> starts = new ArrayList<>();
        for (int leaf = 1; leaf + wish.span() - 1 <= wish.leaves(); leaf++) {
            starts.add(new PadLine(line, leaf, wish.span()));
        }
        return starts;
    }
}
