package tamabako.insight.slip;

/// Slips of the hand: at each step, those that the beads of its rod allow at that moment.
final class BeadSlips {

    /// A bead that the step does not move is brushed along so many times more seldom than one that
    /// it moves slips.
    private static final double BRUSHED = 0.1;

    private final StepLog log;
    private final int lowest;
    private final Effect effect;
    private final Events events;
    private final int first;
    private final int end;
    private Move move = Move.ADD_DIRECT;

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
        this.lowest = lowest;
        this.effect = effect;
        this.events = events;
    }

    /// Adds the slips of every step.
    void add() {
        for (int i = first; i < end; i++) {
            events.after(log.where(i), digitPlace(i));
            switch (log.role(i)) {
                // A carry follows the step that it belongs to, a borrow goes before it.
                case CARRY -> leftOut(Way.CARRY_LEFT_OUT, i, -1, i - 1);
                case BORROW -> leftOut(Way.BORROW_LEFT_OUT, i, 1, i + 1);
                case LOAN -> loan(i);
                case ENTRY -> {}
            }
            if (log.role(i) != StepLog.Role.LOAN) {
                move = Move.of(log, i);
                events.step(move, log.before(i), log.digit(i));
                beads(i);
            }
        }
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

    private void leftOut(Way way, int i, int change, int of) {
        long code = Code.in(code(way, i), Move.of(log, of));
        events.add(tenths(i, change), Code.on(code, log.before(of), log.digit(of)));
    }

    private void loan(int i) {
        if (log.digit(i) < 0) {
            events.add(tenths(i, 1), code(Way.LOAN_NOT_RETURNED, i));
        }
    }

    private void beads(int i) {
        int digit = log.digit(i);
        if (log.passesTen(i)) {
            tenComplement(i, 10 - Math.abs(digit), Integer.signum(digit));
        }
        // Over ten, what moves on this rod is the complement, the other way.
        int change = log.after(i) - log.before(i);
        boolean throughFive = Math.abs(change) < 5 && change != 0 && upper(i) != 0;
        if (throughFive) {
            fiveComplement(i, Math.abs(change), Integer.signum(change));
        }
        lowerBead(i);
        upperBead(i);
    }

    /// The complement is taken off where the step adds, put on where it takes. A wrong way that the
    /// beads do not allow is noticed, and no slip.
    private void tenComplement(int i, int complement, int adds) {
        int digit = 10 - complement;
        usedForTen(Way.TEN_COMPLEMENT_OFF, i, complement, complement - 1);
        usedForTen(Way.TEN_COMPLEMENT_OFF, i, complement, complement + 1);
        usedForTen(Way.TEN_COMPLEMENT_DIGIT, i, complement, digit);
        usedForTen(Way.TEN_COMPLEMENT_TO_FIVE, i, complement, 5 - digit);
        option(Way.TEN_COMPLEMENT_LEFT_OUT, i, adds * complement, complement);
        int reversed = log.before(i) + adds * complement;
        if (isThere(reversed, 9)) {
            option(Way.TEN_COMPLEMENT_REVERSED, i, adds * 2 * complement, complement);
        }
    }

    private void usedForTen(Way way, int i, int complement, int used) {
        int adds = Integer.signum(log.digit(i));
        int after = log.before(i) - adds * used;
        if (used >= 1 && used <= 9 && used != complement && isThere(after, 9)) {
            option(way, i, adds * (complement - used), complement, used);
        }
    }

    /// The five goes one way, the complement to five the other.
    private void fiveComplement(int i, int digit, int up) {
        int complement = 5 - digit;
        usedForFive(Way.FIVE_COMPLEMENT_OFF, i, up, complement - 1);
        usedForFive(Way.FIVE_COMPLEMENT_OFF, i, up, complement + 1);
        usedForFive(Way.FIVE_COMPLEMENT_DIGIT, i, up, digit);
        option(Way.FIVE_COMPLEMENT_LEFT_OUT, i, up * complement, complement);
        option(Way.FIVE_LEFT_OUT, i, -5 * up);
    }

    private void usedForFive(Way way, int i, int up, int used) {
        int complement = 5 - Math.abs(log.after(i) - log.before(i));
        int lower = log.before(i) % 5 - up * used;
        if (used >= 1 && used <= 4 && used != complement && isThere(lower, 4)) {
            option(way, i, up * (complement - used), complement, used);
        }
    }

    private void lowerBead(int i) {
        int lower = log.after(i) % 5;
        int mark = events.mark();
        if (isThere(lower + 1, 4)) {
            option(Way.ONE_BEAD_MORE, i, 1);
        }
        if (isThere(lower - 1, 4)) {
            option(Way.ONE_BEAD_LESS, i, -1);
        }
        events.share(mark, lower == log.before(i) % 5 ? BRUSHED : 1);
    }

    private void upperBead(int i) {
        int mark = events.mark();
        if (isThere(log.after(i) - 5, 9)) {
            option(Way.FIVE_BEAD_LESS, i, -5);
        }
        if (isThere(log.after(i) + 5, 9)) {
            option(Way.FIVE_BEAD_MORE, i, 5);
        }
        events.share(mark, upper(i) == 0 ? BRUSHED : 1);
    }

    /// Whether the beads for `count`, at most `most`, are on the rod.
    private boolean isThere(int count, int most) {
        return (count >= 0 && count <= most) || events.omit(Omission.BEAD_CHECK);
    }

    /// Whether the upper bead comes (1), stays (0) or leaves (-1).
    private int upper(int i) {
        return log.after(i) / 5 - log.before(i) / 5;
    }

    private void option(Way way, int i, int change) {
        add(i, change, code(way, i));
    }

    private void option(Way way, int i, int change, int digit) {
        add(i, change, Code.with(code(way, i), digit));
    }

    private void option(Way way, int i, int change, int digit, int used) {
        add(i, change, Code.with(code(way, i), digit, used));
    }

    private void add(int i, int change, long code) {
        long moved = Code.in(code, move);
        events.add(tenths(i, change), Code.on(moved, log.before(i), log.digit(i)));
    }

    private long tenths(int i, int change) {
        return effect.tenths(change * Tens.power(log.rod(i)));
    }

    private long code(Way way, int i) {
        return Code.of(way, log.where(i), log.rod(i) + lowest);
    }
}
