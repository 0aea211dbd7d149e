package tamabako.problems.making;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.Problem;
import tamabako.problems.words.Sayable;

/// What came of a wish.
public sealed interface Made {

    /// The problems, no two alike, named by their numbers from 1; the same wish, count and seed
    /// make them again.
    record Found(List<Problem> problems, long seed) implements Made {
        public Found {
            problems = List.copyOf(problems);
        }
    }

    /// No such problems exist, or not so many; this is proved.
    ///
    /// @param nearest a wish close by that can be granted, where one is known
    record Impossible(Wish wish, Reason reason, Optional<Wish> nearest) implements Made {}

    /// The search gave up: such problems may exist, and none or too few were found.
    record NotFound(Wish wish, Reason reason) implements Made {}

    /// Why a wish is not granted.
    sealed interface Reason extends Sayable {

        @Override
        default String topic() {
            return "making";
        }

        /// A number of the wish that is out of range.
        record OutOfRange(Part part, int value, int least, int most) implements Reason {}

        /// No technique is allowed.
        record NothingAllowed() implements Reason {}

        /// Techniques are required that are not allowed.
        record RequiredNotAllowed(Set<Technique> required) implements Reason {}

        /// These wishes cannot all be granted together, as is proved; with one of them left out,
        /// the rest can.
        record Clash(List<Sayable> wishes) implements Reason {
            public Clash {
                wishes = List.copyOf(wishes);
            }
        }

        /// There are such problems, only fewer than asked for.
        record OnlySoMany(int count, int there) implements Reason {}

        /// A custom that cannot be kept where `part` is below `least`.
        record CustomNeeds(Custom custom, Part part, int least) implements Reason {}

        /// A custom about rounding, where no answer has decimals to round.
        record CustomNeedsDecimals(Custom custom) implements Reason {}

        /// No set of so many that were drawn keeps the customs; this one was broken most.
        record CustomNotMet(Custom custom, int tries) implements Reason {}

        /// None was found in so many tries.
        record NoneFound(int tries) implements Reason {}

        /// Some were found, then none more in so many tries.
        record NoMoreFound(int found, int tries) implements Reason {}
    }

    /// A part of a wish that has a range.
    enum Part implements Sayable {
        COUNT,
        ROWS,
        LEAST_DIGITS,
        MOST_DIGITS,
        DIGITS_IN_ALL,
        MINUS_ROWS,
        MOST_MINUS_ROWS,
        STROKES_WITHIN,
        PLACES,
        MULTIPLICAND_DIGITS,
        MULTIPLIER_DIGITS,
        DIVISOR_DIGITS,
        QUOTIENT_DIGITS,
        DEGREE,
        ROOT_DIGITS,
        DIGITS,
        ANSWER_PLACES,
        DECIMALS,
        INNER_ZEROS,
        REVISED,
        ROUNDINGS,
        LINES,
        LEAVES,
        SPAN,
        GRADE;

        /// That `value` is out of range for this part; empty if it is in range.
        public Optional<Reason> range(int value, int least, int most) {
            return value >= least && value <= most
                    ? Optional.empty()
                    : Optional.of(new Reason.OutOfRange(this, value, least, most));
        }

        @Override
        public String topic() {
            return "part";
        }
    }
}
