package tamabako.problems.grade;

import java.util.Optional;

/// What the problems of a batch look like.
public sealed interface Format {

    /// Rows to be added and taken (mitorizan).
    ///
    /// @param lengths how many rows, and how long each is
    /// @param signs which problems of the batch have rows that are taken
    /// @param amounts currency and decimals of the rows
    /// @param beadwork the techniques that the steps are done by
    record Columns(Lengths lengths, Signs signs, Amounts amounts, Beadwork beadwork)
            implements Format {}

    /// Multiplications (kakezan). Digits are counted without zeros in front of the first one.
    ///
    /// @param inAll digits of multiplicand and multiplier together
    /// @param multiplicand digits of the multiplicand (jitsu)
    /// @param multiplier digits of the multiplier (hō)
    record Products(Span inAll, Span multiplicand, Span multiplier, Answers answers)
            implements Format {}

    /// Divisions (warizan). Digits are counted without zeros in front of the first one.
    ///
    /// @param inAll digits of divisor and quotient together
    /// @param divisor digits of the divisor (hō)
    /// @param quotient digits of the quotient (shō)
    record Quotients(Span inAll, Span divisor, Span quotient, Answers answers) implements Format {}

    /// Exact roots (kaihō).
    ///
    /// @param degree 2 for square roots (kaihei), 3 for cube roots (kairyū)
    /// @param digits digits of the root
    record Roots(int degree, Span digits) implements Format {}

    /// Numbers on a slip pad (denpyōzan): the same line of so many leaves running is added.
    ///
    /// @param leaves how many leaves a problem adds
    /// @param padLeaves how many leaves the pad has; a problem begins on any leaf that leaves
    ///   enough after it
    /// @param lines how many numbered lines a leaf has
    /// @param digits digits of an amount
    record PadLines(int leaves, int padLeaves, int lines, Span digits, Amounts amounts)
            implements Format {}

    /// Word problems (ōyō keisan).
    ///
    /// @param level the level of the story templates that they are told by
    record Stories(String level) implements Format {}

    /// Single numbers to be set on the frame or read off it; as a problem, a column of one row.
    record Readings(Span digits) implements Format {}

    /// What answers to products and quotients are.
    ///
    /// @param unit the currency as an ISO 4217 code, where the numbers are amounts (meisū)
    /// @param decimals how many problems of the batch have decimals in the numbers given
    /// @param rounded to what places answers are rounded; empty where every answer is exact
    record Answers(Optional<String> unit, int decimals, Optional<Rounded> rounded) {

        /// Whole numbers, exact answers.
        public static final Answers EXACT = new Answers(Optional.empty(), 0, Optional.empty());
    }

    /// Rounding half up (shisha-gonyū). Answers that come out within the places stay as they are.
    ///
    /// @param places the decimals that are kept: 3 for plain numbers in most exams, 0 for yen
    /// @param up how many problems of the batch must be rounded up, at least
    /// @param down how many must lose decimals and be rounded down, at least
    record Rounded(int places, int up, int down) {}
}
