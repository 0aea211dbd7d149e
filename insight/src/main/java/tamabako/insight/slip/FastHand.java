package tamabako.insight.slip;

/// A hand that adds and takes digits as [tamabako.frame.Hand] does, and notes its steps packed.
///
/// It serves the finder, which looks at a hundred thousand workings a minute. Its steps equal those
/// of the trace; a test compares them.
final class FastHand {

    private static final int RODS = 24;

    private final int[] rods = new int[RODS];
    private final StepLog log = new StepLog();

    /// A hand at a frame that shows `number`.
    static FastHand holding(long number) {
        FastHand hand = new FastHand();
        for (int place = 0; place < Tens.length(number); place++) {
            hand.rods[place] = Tens.digit(number, place);
        }
        return hand;
    }

    /// The steps so far.
    StepLog log() {
        return log;
    }

    /// Adds `digit` (0 to 9) on `rod`, then carries.
    void add(int rod, int digit, StepLog.Role role, int where) {
        if (digit == 0) {
            return;
        }
        int held = rods[rod];
        log.note(rod, digit, held, role, where);
        if (held + digit <= 9) {
            rods[rod] = held + digit;
        } else {
            rods[rod] = held + digit - 10;
            add(rod + 1, 1, StepLog.Role.CARRY, where);
        }
    }

    /// Borrows where it must, then takes `digit` (0 to 9) from `rod`.
    void take(int rod, int digit, StepLog.Role role, int where) {
        if (digit == 0) {
            return;
        }
        int held = rods[rod];
        if (held < digit) {
            take(rod + 1, 1, StepLog.Role.BORROW, where);
        }
        log.note(rod, -digit, held, role, where);
        rods[rod] = (held - digit + 10) % 10;
    }

    /// Adds or takes all digits of `number`, the highest first.
    void enter(long number, StepLog.Role role, int where) {
        long size = Math.abs(number);
        for (int place = Tens.length(size) - 1; place >= 0; place--) {
            int digit = Tens.digit(size, place);
            if (number < 0) {
                take(place, digit, role, where);
            } else {
                add(place, digit, role, where);
            }
        }
    }
}
