package tamabako.insight.slip;

import tamabako.frame.Cause;
import tamabako.problems.Mode;

/// Slips with a number that a product, quotient or root starts from: read or heard wrong, or set
/// wrong.
final class OperandSlips {

    private final Mode mode;
    private final Events events;

    OperandSlips(Mode mode, Events events) {
        this.mode = mode;
        this.events = events;
    }

    /// Adds them. A number that is only kept in mind is not set.
    ///
    /// @param number the operand in units of its last place, not negative
    /// @param lowest the power of ten of that place
    /// @param effect what a change of the operand does to the answer
    void add(Cause.Operand operand, long number, int lowest, Effect effect) {
        int where = Code.operand(operand);
        if (mode == Mode.FRAME) {
            FastHand hand = new FastHand();
            hand.enter(number, StepLog.Role.ENTRY, where);
            new BeadSlips(hand.log(), lowest, effect, events).add();
        }
        boolean heard = mode == Mode.CALLED;
        new ReadingSlips(where, lowest, heard, effect, events).add(number);
    }
}
