package tamabako.problems.making.column;

/// What a column asks of its running total and of its answer.
public sealed interface TotalCondition extends Condition {

    /// How the running total goes below zero.
    record BelowZero(Dips dips) implements TotalCondition {
        @Override
        public String template() {
            return "condition.below-zero-"
                    + switch (dips) {
                        case NEVER -> "never";
                        case ONCE_AND_BACK -> "once-and-back";
                        case TO_THE_END -> "to-the-end";
                    };
        }
    }

    /// The answer has `least` to `most` digits, decimals included.
    record AnswerLength(int least, int most) implements TotalCondition {
        @Override
        public String template() {
            return "condition.answer-length-" + Bound.of(least, most);
        }
    }

    /// The answer does not end in 0.
    record NotRound() implements TotalCondition {}

    /// The ways a running total may be asked to go below zero.
    enum Dips {
        /// It never does.
        NEVER,
        /// It does once, and the answer is not below zero.
        ONCE_AND_BACK,
        /// It does once or twice, and the answer is below zero (hosū).
        TO_THE_END
    }
}
