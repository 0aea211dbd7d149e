package tamabako.frame.root;

import tamabako.frame.Given;
import tamabako.frame.Precision;

/// A root that is asked for. The radicand is cut into groups of as many digits as the degree, from
/// the point; every group gives one digit of the root.
///
/// @param degree 2 or 3
record RootSum(int degree, Given radicand, Precision precision) {

    /// The rod of the root's first digit, its unit digit being on rod 0.
    int firstRod() {
        return Math.ceilDiv(radicand.wholeDigits(), degree) - 1;
    }

    /// How many digits are worked after the first; below zero if even the first is beyond the
    /// places asked for.
    int further() {
        return firstRod() - precision.lastRod();
    }

    /// The first digit as seen on paper, from the first group: 0 only for the root of 0.
    int firstDigit() {
        return largest(radicand.number().scaleByPowerOfTen(-degree * firstRod()).intValue());
    }

    /// The largest digit whose power is not above `group`, which is below `10^degree`.
    int largest(int group) {
        int digit = 0;
        while (power(digit + 1) <= group) {
            digit++;
        }
        return digit;
    }

    /// A digit to the power of the degree.
    int power(int digit) {
        return degree == 2 ? digit * digit : digit * digit * digit;
    }

    /// The root as it is shown to people.
    String shown() {
        return (degree == 2 ? "√" : "∛") + radicand.figures();
    }
}
