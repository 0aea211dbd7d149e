package tamabako.problems.making;

import java.util.List;

/// How the digits of a product or quotient are split between its two numbers.
///
/// @param first digits of the multiplicand or divisor
/// @param second digits of the multiplier or quotient
record Split(int first, int second) {

    /// The fewest digits of a number with a zero between others.
    static final int WITH_INNER_ZERO = 3;

    /// All splits of `digits` that fit, the shortest first number first.
    static List<Split> all(int digits, Digits first, Digits second) {
        return first.all()
                .mapToObj(one -> new Split(one, digits - one))
                .filter(split -> second.holds(split.second()))
                .toList();
    }
}
