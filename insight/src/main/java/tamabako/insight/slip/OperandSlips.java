package tamabako.insight.slip;

import tamabako.frame.Cause;

/// Slips with a number that a product, quotient or root starts from: read wrong, or set wrong.
final class OperandSlips {

    private OperandSlips() {}

    /// Adds them.
    ///
    /// @param number the operand in units of its last place, not negative
    /// @param lowest the power of ten of that place
    /// @param effect what a change of the operand does to the answer
    static void add(Cause.Operand operand, long number, int lowest, Effect effect, Events events) {
        int where = Code.operand(operand);
        FastHand hand = new FastHand();
        hand.enter(number, where);
        new BeadSlips(hand.log(), lowest, effect, events).add();
        new ReadingSlips(where, lowest, effect, events).add(number);
    }
}
