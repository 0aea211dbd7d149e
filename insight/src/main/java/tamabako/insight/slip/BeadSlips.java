package tamabako.insight.slip;

/// Slips of the hand: at each step, those that the beads of its rod allow at that moment.
final class BeadSlips {

    private final StepLog log;
    private final int first;
    private final int end;
    private final Events events;
    private final RodSlips rods;

    /// @param lowest the power of ten of the log's rod 0
    /// @param effect what a change on the rods does to the answer
    BeadSlips(StepLog log, int lowest, Effect effect, Events events) {
        this(log, 0, log.size(), lowest, effect, events);
    }

    /// @param first the first step that is looked at
    /// @param end the step after the last
    BeadSlips(StepLog log, int first, int end, int lowest, Effect effect, Events events) {
        this.log = log;
        this.first = first;
        this.end = end;
        this.events = events;
        this.rods = new RodSlips(lowest, effect, events);
    }

    /// Adds the slips of every step.
    void add() {
        for (int i = first; i < end; i++) {
            int rod = log.rod(i);
            int where = log.where(i);
            events.after(where, digitPlace(i));
            switch (log.role(i)) {
                // A carry follows the step that it belongs to, a borrow goes before it.
                case CARRY -> leftOut(i, i - 1);
                case BORROW -> leftOut(i, i + 1);
                case LOAN -> {
                    if (log.digit(i) < 0) {
                        rods.loanNotReturned(rod, where);
                    }
                }
                case ENTRY -> {}
            }
            if (log.role(i) != StepLog.Role.LOAN) {
                rods.step(rod, where, log.before(i), log.digit(i), log.isCarried(i));
            }
        }
    }

    private void leftOut(int i, int of) {
        rods.leftOut(log.rod(i), log.where(i), log.before(of), log.digit(of), log.isCarried(of));
    }

    /// The place of the digit that step `i` serves.
    private int digitPlace(int i) {
        int entry = i;
        while (log.role(entry) == StepLog.Role.BORROW) {
            entry++;
        }
        while (log.role(entry) == StepLog.Role.CARRY) {
            entry--;
        }
        return log.rod(entry);
    }
}
