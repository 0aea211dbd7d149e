package tamabako.bench.insight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/// The plain way to find slips: a column is worked again with each slip in turn, from the digit on
/// that it happens at, by a [TableHand].
final class Reworking {

    /// After the digit at `place` of a row the frame shows `change` too much.
    private record Slip(int row, int place, long change) {}

    private final List<Long> rows;
    private final int[][] digits;
    private final TableHand[][] frames;
    private final Slip[] slips;
    private final TableHand first = new TableHand();
    private final TableHand second = new TableHand();

    Reworking(List<Long> rows) {
        this.rows = rows;
        this.digits = new int[rows.size()][];
        this.frames = new TableHand[rows.size()][];
        TableHand hand = new TableHand();
        for (int row = 0; row < digits.length; row++) {
            String figures = Long.toString(Math.abs(rows.get(row)));
            int length = figures.length();
            digits[row] = new int[length];
            frames[row] = new TableHand[length];
            for (int place = length - 1; place >= 0; place--) {
                digits[row][place] = figures.charAt(length - 1 - place) - '0';
                hand.add((long) sign(row) * digits[row][place] * Math.powExact(10L, place));
                frames[row][place] = new TableHand();
                frames[row][place].showAs(hand);
            }
        }
        this.slips = slips();
    }

    private int sign(int row) {
        return rows.get(row) < 0 ? -1 : 1;
    }

    /// About as many as the finder lists: another digit read, the digit left out or moved, beads,
    /// carries; a row left out, twice, with the other sign or shifted.
    private Slip[] slips() {
        List<Slip> found = new ArrayList<>();
        for (int row = 0; row < digits.length; row++) {
            for (int place = digits[row].length - 1; place >= 0; place--) {
                int digit = sign(row) * digits[row][place];
                long unit = Math.powExact(10L, place);
                Set<Long> changes = new TreeSet<>(List.of(-unit, unit, -5 * unit, 5 * unit));
                changes.addAll(List.of(-10 * unit, 10 * unit, 9L * digit * unit, digit * unit));
                changes.add(digit * unit / 10 - digit * unit);
                for (int as = 0; as <= 9; as++) {
                    changes.add((sign(row) * as - digit) * unit);
                }
                for (long change : changes) {
                    add(found, row, place, change);
                }
            }
            long whole = rows.get(row);
            for (long change : new long[] {-whole, whole, -2 * whole, 9 * whole}) {
                add(found, row, 0, change);
            }
        }
        return found.toArray(new Slip[0]);
    }

    private void add(List<Slip> found, int row, int place, long change) {
        if (change != 0 && frames[row][place].read() + change >= 0) {
            found.add(new Slip(row, place, change));
        }
    }

    /// How many slips are tried.
    int tried() {
        return slips.length;
    }

    /// How many pairs of slips there are, the second after the first.
    long pairs() {
        long pairs = 0;
        for (Slip one : slips) {
            pairs += Arrays.stream(slips).filter(other -> follows(one, other)).count();
        }
        return pairs;
    }

    private static boolean follows(Slip one, Slip other) {
        return other.row > one.row || (other.row == one.row && other.place < one.place);
    }

    /// How many single slips lead to `answer`.
    int leadingTo(long answer) {
        int leading = 0;
        for (Slip slip : slips) {
            first.showAs(frames[slip.row][slip.place]);
            first.add(slip.change);
            rest(first, slip.row, slip.place - 1);
            leading += first.read() == answer ? 1 : 0;
        }
        return leading;
    }

    /// How many pairs lead to `answer` whose first slip is number `from`, or every `step`th after.
    int pairsLeadingTo(long answer, int from, int step) {
        int leading = 0;
        for (int i = from; i < slips.length; i += step) {
            for (Slip other : slips) {
                if (follows(slips[i], other)) {
                    leading += isPair(slips[i], other, answer) ? 1 : 0;
                }
            }
        }
        return leading;
    }

    private boolean isPair(Slip one, Slip other, long answer) {
        second.showAs(frames[one.row][one.place]);
        second.add(one.change);
        int row = one.row;
        int from = one.place - 1;
        while (row < other.row) {
            second.add(digits[row], from, rows.get(row) < 0);
            row++;
            from = digits[row].length - 1;
        }
        for (int place = from; place >= other.place; place--) {
            second.add((long) sign(row) * digits[row][place] * Math.powExact(10L, place));
        }
        second.add(other.change);
        rest(second, other.row, other.place - 1);
        return second.read() == answer;
    }

    private void rest(TableHand hand, int row, int from) {
        hand.add(digits[row], from, rows.get(row) < 0);
        for (int next = row + 1; next < digits.length; next++) {
            hand.add(digits[next], digits[next].length - 1, rows.get(next) < 0);
        }
    }

    /// All answers that single slips lead to.
    Set<Long> answers() {
        Set<Long> answers = new TreeSet<>();
        for (Slip slip : slips) {
            first.showAs(frames[slip.row][slip.place]);
            first.add(slip.change);
            rest(first, slip.row, slip.place - 1);
            answers.add(first.read());
        }
        return answers;
    }
}
