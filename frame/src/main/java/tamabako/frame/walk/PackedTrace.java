package tamabako.frame.walk;

import java.util.Arrays;
import java.util.Objects;
import tamabako.frame.CarryOrder;
import tamabako.frame.Unworkable;

/// Works columns and notes every step as an int ([PackedStep]) in an array that is used again and
/// again; it grows when a column has more steps than any before. For one thread.
///
/// The steps are those of the setting and the trace that [tamabako.frame.column.ColumnWork] makes
/// on a modern frame, in the same order.
public final class PackedTrace {

    /// More steps than one row makes: fifteen digits and a carry to each rod.
    private static final int ROOM = 32;

    /// The even rods of a packed number.
    private static final long EVEN = 0x0F0F_0F0F_0F0F_0F0FL;

    private final Loan loan;
    private final boolean carryFirst;
    private int[] steps = new int[8 * ROOM];
    private int[] ends = new int[16];
    private int size;
    private int rows;
    private long held;

    /// A trace for whole numbers, worked in the common order.
    public PackedTrace() {
        this(0, CarryOrder.REMOVE_THEN_CARRY);
    }

    /// A trace for numbers packed with `places` decimals, 0 to 14, that carries in `order`.
    public PackedTrace(int places, CarryOrder order) {
        this.loan = new Loan(places);
        this.carryFirst = order == CarryOrder.CARRY_THEN_REMOVE;
    }

    /// Works the first `count` rows of `column` from a cleared frame. They are packed numbers.
    ///
    /// @throws Unworkable if the total needs more than sixteen rods; clear the trace then
    public void work(long[] column, int count) {
        clear();
        for (int i = 0; i < count; i++) {
            put(column[i]);
        }
    }

    /// Clears the frame and forgets all steps.
    public void clear() {
        loan.clear();
        size = 0;
        rows = 0;
        held = 0;
    }

    /// Works one row more, a packed number.
    ///
    /// @throws Unworkable if the total needs more than sixteen rods; clear the trace then
    public void put(long row) {
        if (row < 0 && Long.compareUnsigned(row & ~PackedNumber.MINUS, held) > 0) {
            play(loan.lend(held, row), PackedStep.Entry.LOAN);
        }
        boolean set = rows == 0 && row > 0;
        play(row, set ? PackedStep.Entry.SETTING : PackedStep.Entry.ROW);
        if (loan.runs()) {
            play(loan.giveBack(held), PackedStep.Entry.LOAN_RETURNED);
        }
        if (rows == ends.length) {
            ends = Arrays.copyOf(ends, 2 * rows);
        }
        ends[rows++] = size;
    }

    private void play(long row, PackedStep.Entry entry) {
        long side = row >> 63;
        long seen = AllRods.seen(held, side);
        long raised = AllRods.raised(row);
        if (AllRods.runsOff(seen, raised)) {
            throw Loan.frameTooShort();
        }
        if (steps.length - size < ROOM) {
            steps = Arrays.copyOf(steps, 2 * steps.length);
        }
        note(row & ~PackedNumber.MINUS, side, PackedStep.serving(entry));
        long carries = AllRods.carries(seen, raised);
        held = AllRods.seen(AllRods.shown(seen, raised, carries), side);
    }

    /// Notes `digits` from the left, two rods at a time.
    private void note(long digits, long side, int serving) {
        int[] to = steps;
        int at = size;
        int farFirst = carryFirst ? 1 : (int) side & 1;
        long odd = (held & ~EVEN) | ((digits >>> 4) & EVEN);
        long even = ((held & EVEN) << 4) | (digits & EVEN);
        int rod = (PackedNumber.digits(digits) - 1) | 1;
        int marks = serving + rod * PackedStep.LEFT;
        long above = StepTable.entry(side, even >>> (4 * rod + 4));
        for (; rod > 0; rod -= 2) {
            long left = StepTable.entry(side, odd >>> (4 * rod - 4));
            at = note(left, above, to, at, marks, farFirst);
            if (StepTable.runsOn(left, above)) {
                at = runOn(at, marks, digits, side);
            }
            marks -= PackedStep.LEFT;
            above = StepTable.entry(side, even >>> (4 * rod - 4));
            at = note(above, left, to, at, marks, farFirst);
            if (StepTable.runsOn(above, left)) {
                at = runOn(at, marks, digits, side);
            }
            marks -= PackedStep.LEFT;
        }
        size = at;
    }

    /// Both a digit and its carry or borrow are written, whether they are there or not; the next
    /// ones are written over what is not.
    private static int note(long entry, long above, int[] to, int at, int marks, int farFirst) {
        int near = (int) entry;
        int far = (int) (above >>> 32);
        to[at + 1 - farFirst] = far + marks;
        to[at + (PackedStep.passesTen(near) & farFirst)] = near + marks;
        return at + PackedStep.steps(near);
    }

    /// Notes how a carry or borrow of the digit of `marks` runs on from the rod left of it.
    private int runOn(int behind, int marks, long digits, long side) {
        boolean farFirst = carryFirst || side < 0;
        int first = behind - 2;
        int at = behind;
        int further = 0;
        int passed;
        do {
            further++;
            int rod = PackedStep.place(marks) + 1 + further;
            long entry = StepTable.entry(side, held >>> (4 * rod), digits >>> (4 * rod));
            passed = (int) (entry >>> 32) + marks + PackedStep.on(further);
            if (farFirst) {
                System.arraycopy(steps, first, steps, first + 1, at - first);
            }
            steps[farFirst ? first : at] = passed;
            at++;
        } while (PackedStep.passesTen(passed) == 1);
        return at;
    }

    /// How many steps there are.
    public int size() {
        return size;
    }

    /// Step `index`, 0 to [#size()] - 1, to be read with [PackedStep].
    public int step(int index) {
        return steps[Objects.checkIndex(index, size)];
    }

    /// How many rows have been worked.
    public int rows() {
        return rows;
    }

    /// How many steps there are up to the end of row `index`, counted from 0.
    public int endOfRow(int index) {
        return ends[Objects.checkIndex(index, rows)];
    }

    /// The total, in units of the last decimal place.
    public long total() {
        return PackedNumber.size(held) - loan.lent();
    }
}
