package tamabako.insight.slip;

import java.util.Optional;

/// Slips that may stand behind an answer, with their shares; one slip may have several entries.
interface Weighed {

    /// How many entries there are.
    int size();

    /// The packed slip of entry `i`.
    long code(int i);

    /// By how many tenths the slip of entry `i` alone changes the answer.
    long tenths(int i);

    /// The share that entry `i` has in the answer; the shares sum to 1 with [#unexplained()].
    double share(int i);

    /// How likely it is that the slip of entry `i` was made in this way.
    double made(int i);

    /// The share of no known slip.
    double unexplained();

    /// The chance of the answer.
    double all();

    /// The likeliest two slips at once, where any two lead to the answer.
    Optional<Finding.Together> two();

    /// The likeliest three slips at once, where neither one nor two lead to the answer.
    Optional<Finding.Together> three();
}
