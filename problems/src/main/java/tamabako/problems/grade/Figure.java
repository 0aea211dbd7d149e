package tamabako.problems.grade;

import java.util.Locale;
import tamabako.problems.words.Sayable;

/// The sorts of figures that a paper has.
public enum Figure implements Sayable {
    /// Which sections there are, and how many problems they have.
    COUNT,
    /// Points for a right answer.
    POINTS,
    /// The time.
    TIME,
    /// What has to be reached.
    PASS,
    /// The score of each rank.
    RANKS,
    /// Digits of a row, or in all.
    DIGITS,
    /// How the digits in all are split over the two numbers.
    SPLIT,
    /// How many rows a column has.
    ROWS,
    /// How many columns are mixed, and where they stand.
    SIGNS,
    /// How many rows of a mixed column are taken.
    MINUS_ROWS,
    /// Answers below zero.
    NEGATIVE,
    /// Numbers with decimals.
    DECIMALS,
    /// Rounding.
    ROUNDING,
    /// Amounts of money.
    CURRENCY,
    /// Leaves and lines of a slip pad.
    PAD,
    /// Degree of the roots.
    DEGREE,
    /// Level of the word problems.
    LEVEL,
    /// What the steps are done by.
    TECHNIQUES,
    /// Order and numbering of the problems.
    ORDER,
    /// How answers are to be written.
    WRITING;

    @Override
    public String topic() {
        return "figure";
    }

    /// The word used in files.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
