package tamabako.insight.simulation;

import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;

/// A soroban of real beads for simulated pupils: upper and lower beads are counted apart, every
/// push looks whether the beads are there, and the number is read off at the end.
///
/// Written from the rules of the bead alone (K. Tochio, Computation on the Soroban, 1912), apart
/// from the finder.
final class BeadFrame {

    /// The pupil cannot go on: a bead is missing.
    static final class Stuck extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private static final int RODS = 20;

    private final int[] upper = new int[RODS];
    private final int[] lower = new int[RODS];
    private final Fate fate;
    private Move move = Move.ADD_DIRECT;

    BeadFrame(Fate fate) {
        this.fate = fate;
    }

    /// Sets `number` on a clear frame, without a slip.
    void show(long number) {
        long left = number;
        for (int rod = 0; rod < RODS; rod++) {
            upper[rod] = (int) (left % 10 / 5);
            lower[rod] = (int) (left % 5);
            left /= 10;
        }
    }

    long read() {
        long number = 0;
        for (int rod = RODS - 1; rod >= 0; rod--) {
            number = 10 * number + count(rod);
        }
        return number;
    }

    /// Adds `digit` for `row`; slips as fate will.
    void add(int row, int rod, int digit) {
        add(row, rod, digit, false);
    }

    private void add(int row, int rod, int digit, boolean carried) {
        if (digit == 0) {
            return;
        }
        begin(rod, digit, carried);
        if (count(rod) + digit <= 9) {
            up(row, rod, digit);
            brush(row, rod, digit);
            return;
        }
        int complement = 10 - digit;
        down(row, rod, wrongTen(row, rod, complement, -1));
        brush(row, rod, -complement);
        if (!forgets(true, carried) && !falls(SlipKind.CARRY_LEFT_OUT, row, rod + 1, 1)) {
            add(row, rod + 1, 1, true);
        }
    }

    /// Takes `digit` for `row`; slips as fate will.
    void take(int row, int rod, int digit) {
        take(row, rod, digit, false);
    }

    private void take(int row, int rod, int digit, boolean carried) {
        if (digit == 0) {
            return;
        }
        begin(rod, -digit, carried);
        if (count(rod) >= digit) {
            down(row, rod, digit);
            brush(row, rod, -digit);
            return;
        }
        if (rod + 1 >= RODS) {
            throw new Stuck();
        }
        Move own = move;
        if (!forgets(false, carried) && !falls(SlipKind.BORROW_LEFT_OUT, row, rod + 1, 1)) {
            take(row, rod + 1, 1, true);
        }
        move = own;
        int complement = 10 - digit;
        up(row, rod, wrongTen(row, rod, complement, 1));
        brush(row, rod, complement);
    }

    /// The hand begins a step, by the move that the rod asks for now.
    private void begin(int rod, int digit, boolean carried) {
        int sum = count(rod) + digit;
        boolean runsOn = carried && (sum < 0 || sum > 9);
        move = runsOn ? Move.CARRY_RUNS_ON : Move.of(count(rod), digit);
        fate.steps(move);
    }

    private boolean falls(SlipKind kind, int row, int rod, double weight) {
        return fate.falls(kind, row, rod, weight, move);
    }

    /// Whether a habit leaves this carry or borrow out.
    private boolean forgets(boolean adding, boolean carried) {
        Habit habit = fate.habit();
        boolean applies =
                habit.isOver(Habit.Part.CARRY, adding)
                        || (carried && habit.isOver(Habit.Part.RUNNING_CARRY, adding));
        return applies && fate.follows();
    }

    private int count(int rod) {
        return 5 * upper[rod] + lower[rod];
    }

    /// What the pupil moves instead of `complement`: another number, nothing, or the other way.
    private int wrongTen(int row, int rod, int complement, int way) {
        int digit = 10 - complement;
        Habit habit = fate.habit();
        int habitual = count(rod) + way * habit.used();
        if (habit.isOver(Habit.Part.TEN_COMPLEMENT, way < 0)
                && habit.digit() == digit
                && habitual >= 0
                && habitual <= 9
                && fate.follows()) {
            return habit.used();
        }
        int used = complement;
        int[] others = {complement - 1, complement + 1, digit, 5 - digit, 0, -complement};
        double[] weights = {0.15, 0.15, 0.3, 0.1, 0.15, 0.15};
        for (int i = 0; i < others.length; i++) {
            int after = count(rod) + way * others[i];
            boolean odd = others[i] != complement && (i >= 4 || others[i] > 0);
            if (odd && others[i] <= 9 && after >= 0 && after <= 9 && falls(row, rod, weights[i])) {
                used = others[i];
            }
        }
        return used;
    }

    private boolean falls(int row, int rod, double weight) {
        return falls(SlipKind.TEN_COMPLEMENT_WRONG, row, rod, weight);
    }

    /// Brings `digit` to the beam of one rod; below zero, takes it away.
    private void up(int row, int rod, int digit) {
        if (digit < 0) {
            down(row, rod, -digit);
        } else if (lower[rod] + digit % 5 <= 4) {
            push(rod, digit / 5, digit % 5);
        } else {
            throughFive(row, rod, digit, 1);
        }
    }

    private void down(int row, int rod, int digit) {
        if (digit < 0) {
            up(row, rod, -digit);
        } else if (lower[rod] >= digit % 5) {
            push(rod, -digit / 5, -(digit % 5));
        } else {
            throughFive(row, rod, digit, -1);
        }
    }

    /// Five one way, the complement to five the other.
    private void throughFive(int row, int rod, int digit, int way) {
        int complement = 5 - digit;
        Habit habit = fate.habit();
        int habitual = lower[rod] - way * habit.used();
        if (habit.isOver(Habit.Part.FIVE_COMPLEMENT, way > 0)
                && habit.digit() == digit
                && habitual >= 0
                && habitual <= 4
                && fate.follows()) {
            push(rod, way, -way * habit.used());
            return;
        }
        if (habit.isOver(Habit.Part.FIVE_BEAD, way > 0)
                && habit.digit() == digit
                && fate.follows()) {
            push(rod, 0, -way * complement);
            return;
        }
        int five = way;
        int used = complement;
        int[] others = {complement - 1, complement + 1, digit, 0};
        double[] weights = {0.15, 0.15, 0.2, 0.3};
        for (int i = 0; i < others.length; i++) {
            int after = lower[rod] - way * others[i];
            boolean odd = others[i] != complement && (i == 3 || others[i] > 0) && others[i] < 5;
            if (odd && after >= 0 && after <= 4 && fallsFive(row, rod, weights[i])) {
                used = others[i];
            }
        }
        if (fallsFive(row, rod, 0.2)) {
            five = 0;
        }
        push(rod, five, -way * used);
    }

    private boolean fallsFive(int row, int rod, double weight) {
        return falls(SlipKind.FIVE_COMPLEMENT_WRONG, row, rod, weight);
    }

    /// After the move a bead too many or too few stays.
    private void brush(int row, int rod, int change) {
        int before = count(rod) - change;
        boolean lowerMoved = before < 0 || before % 5 != lower[rod];
        boolean upperMoved = before < 0 || before / 5 != upper[rod];
        double lowerWeight = (lowerMoved ? 1 : 0.1) / (lower[rod] % 4 == 0 ? 1 : 2);
        if (lower[rod] < 4 && falls(SlipKind.ONE_BEAD, row, rod, lowerWeight)) {
            push(rod, 0, 1);
        } else if (lower[rod] > 0 && falls(SlipKind.ONE_BEAD, row, rod, lowerWeight)) {
            push(rod, 0, -1);
        }
        if (falls(SlipKind.FIVE_BEAD, row, rod, upperMoved ? 1 : 0.1)) {
            push(rod, upper[rod] == 0 ? 1 : -1, 0);
        }
    }

    private void push(int rod, int uppers, int lowers) {
        upper[rod] += uppers;
        lower[rod] += lowers;
        if (upper[rod] < 0 || upper[rod] > 1 || lower[rod] < 0 || lower[rod] > 4) {
            throw new Stuck();
        }
    }
}
