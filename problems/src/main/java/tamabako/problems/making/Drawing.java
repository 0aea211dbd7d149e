package tamabako.problems.making;

import java.math.BigInteger;
import java.util.Optional;
import tamabako.problems.Problem;
import tamabako.problems.making.draw.Draws;

/// How one problem of a set is drawn.
interface Drawing {

    /// How many splits of the digits there are, 1 or more.
    int splits();

    /// Whether a problem of that split can have a zero between other digits, where a custom looks
    /// for it.
    boolean mayHaveInnerZero(int split);

    /// A problem without a name of the split number `split`, with decimals or without; empty where
    /// this try came to nothing.
    Optional<Problem> draw(Draws draws, int split, boolean decimals);

    /// How many such problems there are; empty where they are not counted.
    Optional<BigInteger> there();

    /// Whether `problem` is one of those that are counted.
    boolean holds(Problem problem);
}
