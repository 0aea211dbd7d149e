package tamabako.bench.making;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.LongStream;

/// Columns that are thrown like dice, digit by digit, and thrown away where they do not fit. Each
/// stops at the first sign that a column does not.
final class Thrown {

    private static final long SEED = 20260401;

    private final SolverTask wish;
    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Hand hand = new Hand();
    private final long[] rows;
    private final int[] counts = new int[10];
    private final int[] bag = new int[100];
    private long tries;

    Thrown(Task task) {
        this.wish = task.forSolver();
        this.rows = new long[wish.rows()];
    }

    /// How many columns have been begun.
    long tries() {
        return tries;
    }

    /// Signs, lengths and digits by chance: the measure of what is even.
    static Peer plain(Task task) {
        Thrown thrown = new Thrown(task);
        return new Peer("plain rejection", _ -> thrown.plain());
    }

    long[] plain() {
        while (true) {
            tries++;
            signs();
            Arrays.fill(counts, 0);
            if (digits() && hand.work(rows) && wish.isWorkedBy(hand)) {
                return rows;
            }
        }
    }

    /// Any pattern of signs is as likely as the others; 1 or -1 in every row.
    private void signs() {
        int minus;
        do {
            minus = random.nextInt(1 << wish.rows()) & -2;
        } while (Integer.bitCount(minus) < wish.leastMinus()
                || Integer.bitCount(minus) > wish.mostMinus());
        for (int row = 0; row < rows.length; row++) {
            rows[row] = ((minus >> row) & 1) == 1 ? -1 : 1;
        }
    }

    private boolean digits() {
        long total = 0;
        int before = 0;
        for (int row = 0; row < rows.length; row++) {
            int length = random.nextInt(wish.least(), wish.most() + 1);
            int lead = random.nextInt(1, 10);
            if ((wish.leadsDiffer() && lead == before) || isTooMany(lead)) {
                return false;
            }
            long number = lead;
            for (int i = 1; i < length; i++) {
                int digit = random.nextInt(10);
                if (isTooMany(digit)) {
                    return false;
                }
                number = 10 * number + digit;
            }
            rows[row] *= number;
            if (!isDirect(total, rows[row])) {
                return false;
            }
            total += rows[row];
            if (total < 0) {
                return false;
            }
            before = lead;
        }
        return Arrays.stream(counts).allMatch(count -> count >= wish.leastDigits());
    }

    private boolean isTooMany(int digit) {
        return ++counts[digit] > wish.mostDigits() && wish.mostDigits() > 0;
    }

    /// Whether a row goes directly on the rods, where it has to.
    private boolean isDirect(long total, long row) {
        if (wish.passesTen() || total == 0) {
            return true;
        }
        long held = total;
        for (long size = Math.abs(row); size > 0; size /= 10) {
            if (!Hand.isDirect((int) (held % 10), (int) (size % 10), row < 0)) {
                return false;
            }
            held /= 10;
        }
        return true;
    }

    /// Row by row, each one of all that go directly on the total before; the column is begun anew
    /// where there is none. Quick, and not even: a row that many others could follow is no likelier
    /// than one that leads nowhere.
    static Peer rows(Task task) {
        Thrown thrown = new Thrown(task);
        long[][][] next = new long[2][100][];
        for (int total = 0; total < 100; total++) {
            long held = total;
            next[0][total] =
                    LongStream.range(10, 100 - total)
                            .filter(row -> thrown.isDirect(held, row))
                            .toArray();
            next[1][total] =
                    LongStream.range(-total, -9)
                            .filter(row -> thrown.isDirect(held, row))
                            .toArray();
        }
        return new Peer("row by row", _ -> thrown.byRows(next));
    }

    private long[] byRows(long[][][] next) {
        while (true) {
            tries++;
            signs();
            int total = 0;
            int row = 0;
            while (row < rows.length) {
                long[] may = next[rows[row] < 0 ? 1 : 0][total];
                if (may.length == 0) {
                    break;
                }
                rows[row] = may[random.nextInt(may.length)];
                total += (int) rows[row++];
            }
            if (row == rows.length) {
                return rows;
            }
        }
    }

    /// The digits of all rows are put in a bag, each as often as it may be, and mixed.
    static Peer bag(Task task) {
        Thrown thrown = new Thrown(task);
        return new Peer("bag of digits, mixed", _ -> thrown.fromBag());
    }

    private long[] fromBag() {
        while (true) {
            tries++;
            signs();
            fill(lengths());
            if (rowsOfBag() && hand.work(rows) && wish.isWorkedBy(hand)) {
                return rows;
            }
        }
    }

    /// Leaves the lengths in the rows, with their signs; how many digits that is.
    private int lengths() {
        int all = 0;
        do {
            all = 0;
            for (int row = 0; row < rows.length; row++) {
                int length = random.nextInt(wish.least(), wish.most() + 1);
                rows[row] = Long.signum(rows[row]) * (long) length;
                all += length;
            }
        } while (all < 10 * wish.leastDigits() || all > 10 * wish.mostDigits());
        return all;
    }

    /// Each digit as seldom as it may be, the others by chance; then mixed.
    private void fill(int all) {
        Arrays.fill(counts, wish.leastDigits());
        int size = 0;
        for (int digit = 0; digit <= 9; digit++) {
            for (int i = 0; i < wish.leastDigits(); i++) {
                bag[size++] = digit;
            }
        }
        while (size < all) {
            int digit = random.nextInt(10);
            if (counts[digit] < wish.mostDigits()) {
                counts[digit]++;
                bag[size++] = digit;
            }
        }
        for (int left = all; left > 1; left--) {
            int taken = random.nextInt(left);
            int digit = bag[taken];
            bag[taken] = bag[left - 1];
            bag[left - 1] = digit;
        }
    }

    private boolean rowsOfBag() {
        int from = 0;
        int before = 0;
        long total = 0;
        for (int row = 0; row < rows.length; row++) {
            int length = (int) Math.abs(rows[row]);
            int lead = bag[from];
            if (lead == 0 || (wish.leadsDiffer() && lead == before)) {
                return false;
            }
            long number = 0;
            for (int i = 0; i < length; i++) {
                number = 10 * number + bag[from++];
            }
            rows[row] = Long.signum(rows[row]) * number;
            total += rows[row];
            if (total < 0) {
                return false;
            }
            before = lead;
        }
        return true;
    }
}
