package tamabako.problems.making;

import java.util.List;
import java.util.Optional;
import tamabako.problems.making.Made.Part;
import tamabako.problems.making.Made.Reason;

/// What a wish for products or quotients may ask for.
///
/// @param digits digits of both numbers together
/// @param first digits of the multiplicand or divisor
/// @param second digits of the multiplier or quotient
/// @param parts what the two are called
record PairLimits(
        int digits,
        Digits first,
        Digits second,
        Parts parts,
        Numbers numbers,
        List<Custom> customs) {

    private static final int MOST_DIGITS = 15;

    /// With decimals, the places behind the point need rods as well.
    private static final int MOST_WITH_DECIMALS = 8;

    /// A divisor stands on the frame, and each of its digits makes the last product longer.
    private static final int MOST_OF_DIVISOR = 6;

    /// @param zeros the part that an inner zero needs digits of
    record Parts(Part first, Part second, Part zeros) {}

    static PairLimits of(ProductWish wish) {
        var parts =
                new Parts(
                        Part.MULTIPLICAND_DIGITS, Part.MULTIPLIER_DIGITS, Part.MULTIPLICAND_DIGITS);
        return new PairLimits(
                wish.digits(),
                wish.multiplicand(),
                wish.multiplier(),
                parts,
                wish.numbers(),
                wish.customs());
    }

    static PairLimits of(QuotientWish wish) {
        var parts = new Parts(Part.DIVISOR_DIGITS, Part.QUOTIENT_DIGITS, Part.QUOTIENT_DIGITS);
        return new PairLimits(
                wish.digits(),
                wish.divisor(),
                wish.quotient(),
                parts,
                wish.numbers(),
                wish.customs());
    }

    /// Why no set of `count` problems can be as asked; empty if nothing forbids it.
    Optional<Reason> reason(int count) {
        return sizes().or(this::decimals)
                .or(() ->
                        customs.stream()
                                .flatMap(custom -> needs(custom, count).stream())
                                .findFirst());
    }

    private Optional<Reason> sizes() {
        return range(parts.first(), first, mostOfFirst())
                .or(() -> range(parts.second(), second, mostDigits()))
                .or(() ->
                        Limits.range(
                                Part.DIGITS,
                                digits,
                                first.least() + second.least(),
                                first.most() + second.most()));
    }

    private static Optional<Reason> range(Part part, Digits digits, int most) {
        return Limits.range(part, digits.least(), 1, most)
                .or(() -> Limits.range(part, digits.most(), digits.least(), most));
    }

    private int mostOfFirst() {
        boolean divides = parts.first() == Part.DIVISOR_DIGITS;
        return divides && numbers.decimals() > 0 ? MOST_OF_DIVISOR : mostDigits();
    }

    private int mostDigits() {
        return numbers.decimals() > 0 ? MOST_WITH_DECIMALS : MOST_DIGITS;
    }

    private Optional<Reason> decimals() {
        int places = numbers instanceof Numbers.Plain(int asked, _) ? asked : 1;
        return Limits.range(Part.ANSWER_PLACES, places, 1, Numbers.MOST_PLACES)
                .or(() -> Limits.range(Part.DECIMALS, numbers.decimals(), 0, 100));
    }

    /// What `custom` cannot be kept for; each is a proof. A number of two digits has no digit
    /// between others. By a divisor of one digit the trial digit is the quotient's own. No answer
    /// is rounded without decimals, and none both up and down.
    private Optional<Reason> needs(Custom custom, int count) {
        return switch (custom) {
            case Custom.InnerZeros(int least, int most) ->
                    Limits.range(Part.INNER_ZEROS, least, 0, count)
                            .or(() ->
                                    Limits.range(Part.INNER_ZEROS, most, least, Integer.MAX_VALUE))
                            .or(() ->
                                    least > 0 && longestZeros() < 3
                                            ? needed(custom, parts.zeros(), 3)
                                            : Optional.empty());
            case Custom.Revised(int least) ->
                    Limits.range(Part.REVISED, least, 0, count)
                            .or(() ->
                                    least > 0 && longestFirst() < 2
                                            ? needed(custom, Part.DIVISOR_DIGITS, 2)
                                            : Optional.empty());
            case Custom.BothRoundings(int up, int down) ->
                    Part.ROUNDINGS
                            .range(Math.min(up, down), 0, count)
                            .or(() -> Part.ROUNDINGS.range(up + down, 0, count))
                            .or(() ->
                                    up + down > 0
                                            ? rounding(custom, up + down, count)
                                            : Optional.empty());
            case Custom.SomeShort _ ->
                    numbers instanceof Numbers.Plain
                            ? rounding(custom, 1, count)
                            : Optional.of(new Reason.CustomNeedsDecimals(custom));
            case Custom.NoTies _,
                    Custom.EvenDigits _,
                    Custom.FewLeadingOnes _,
                    Custom.DifferentFirstDigits _,
                    Custom.EvenSplits _ ->
                    Optional.empty();
        };
    }

    private Optional<Reason> rounding(Custom custom, int problems, int count) {
        if (numbers.decimals() == 0) {
            return Optional.of(new Reason.CustomNeedsDecimals(custom));
        }
        int enough = count;
        while (numbers.decimals(enough) < problems) {
            enough++;
        }
        return enough == count ? Optional.empty() : needed(custom, Part.COUNT, enough);
    }

    private static Optional<Reason> needed(Custom custom, Part part, int least) {
        return Optional.of(new Reason.CustomNeeds(custom, part, least));
    }

    /// The most digits that a number with an inner zero could have.
    private int longestZeros() {
        int longest =
                Split.all(digits, first, second).stream().mapToInt(Split::second).max().orElse(0);
        return parts.zeros() == parts.second() ? longest : Math.max(longest, longestFirst());
    }

    private int longestFirst() {
        return Split.all(digits, first, second).stream().mapToInt(Split::first).max().orElse(0);
    }

    ProductWish nearest(ProductWish wish, int count) {
        PairLimits near = clamped();
        ProductWish sized =
                new ProductWish(near.digits, near.first, near.second, near.numbers, wish.customs());
        return sized.keeping(near.keepable(count));
    }

    QuotientWish nearest(QuotientWish wish, int count) {
        PairLimits near = clamped();
        QuotientWish sized =
                new QuotientWish(
                        near.digits, near.first, near.second, near.numbers, wish.customs());
        return sized.keeping(near.keepable(count));
    }

    private PairLimits clamped() {
        Numbers near =
                switch (numbers) {
                    case Numbers.Whole whole -> whole;
                    case Numbers.Plain(int places, int share) ->
                            new Numbers.Plain(
                                    Math.clamp(places, 1, Numbers.MOST_PLACES),
                                    Math.clamp(share, 0, 100));
                    case Numbers.Amounts(String unit, int share) ->
                            new Numbers.Amounts(unit, Math.clamp(share, 0, 100));
                };
        Digits one = first.within(1, mostOfFirst());
        Digits other = second.within(1, mostDigits());
        int all = Math.clamp(digits, one.least() + other.least(), one.most() + other.most());
        return new PairLimits(all, one, other, parts, near, customs);
    }

    private List<Custom> keepable(int count) {
        return customs.stream().filter(custom -> needs(custom, count).isEmpty()).toList();
    }
}
