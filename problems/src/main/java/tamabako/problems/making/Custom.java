package tamabako.problems.making;

import java.util.ArrayList;
import java.util.List;
import tamabako.problems.words.Sayable;

/// A custom of setters that a set of products or quotients keeps. All of them are common practice,
/// no published source.
public sealed interface Custom extends Sayable {

    @Override
    default String topic() {
        return "custom";
    }

    /// The first place that is dropped never holds a 5 with nothing behind it.
    record NoTies() implements Custom {}

    /// So many answers at least are rounded up, and so many down.
    record BothRoundings(int up, int down) implements Custom {}

    /// One problem with decimals at least has an exact answer of fewer places than are asked for.
    record SomeShort() implements Custom {}

    /// So many problems of the set have a zero between other digits: of a factor in a product, of
    /// the quotient in a division.
    record InnerZeros(int least, int most) implements Custom {}

    /// In so many quotients at least the first trial digit has to be revised, where it is found by
    /// the divisor's first digit.
    record Revised(int least) implements Custom {}

    /// Each digit from 2 to 9 is about equally often a digit of the multiplier or quotient: no
    /// further from their mean than half of it, or than 2 where that is more.
    record EvenDigits() implements Custom {}

    /// No more than one in five of the factors, or of the divisors and quotients, begins with 1.
    record FewLeadingOnes() implements Custom {}

    /// The answers begin with different digits where they can: no first digit stands oftener than
    /// its share of nine and once more, or than in one answer of five where that is more.
    record DifferentFirstDigits() implements Custom {}

    /// Each split of the digits between the two numbers comes equally often, as far as the count
    /// goes.
    record EvenSplits() implements Custom {}

    /// The customs that a paper's products keep, as far as they can.
    static List<Custom> usualFor(ProductWish wish) {
        boolean zeros = Math.max(wish.multiplicand().most(), wish.multiplier().most()) >= 3;
        return usual(wish.numbers(), zeros);
    }

    /// The customs that a paper's quotients keep, as far as they can.
    static List<Custom> usualFor(QuotientWish wish) {
        List<Custom> usual = usual(wish.numbers(), wish.quotient().most() >= 3);
        if (wish.divisor().most() >= 2) {
            usual.add(new Revised(2));
        }
        return usual;
    }

    private static List<Custom> usual(Numbers numbers, boolean zeros) {
        List<Custom> usual = new ArrayList<>();
        usual.add(new EvenSplits());
        usual.add(new EvenDigits());
        usual.add(new FewLeadingOnes());
        usual.add(new DifferentFirstDigits());
        if (zeros) {
            usual.add(new InnerZeros(1, 2));
        }
        if (numbers.decimals() > 0) {
            usual.add(new NoTies());
            usual.add(new BothRoundings(1, 1));
        }
        if (numbers.decimals() > 0 && numbers instanceof Numbers.Plain) {
            usual.add(new SomeShort());
        }
        return usual;
    }
}
