package tamabako.insight.simulation;

import java.util.List;
import tamabako.insight.slip.SlipKind;

/// A simulated pupil who keeps the total of a column of whole rows in mind, while the rows are
/// shown or called one after another, and slips where fate will have it. No bead is touched: what
/// slips is ear, eye and memory, and last the pencil.
public final class MindPupil {

    /// Called digits that sound alike in Japanese: ichi, shichi and hachi; shi and shichi.
    private static final List<String> ALIKE = List.of("17", "18", "47", "78");

    private final List<Long> rows;
    private final boolean called;
    private final Fate fate;
    private long total;

    private MindPupil(List<Long> rows, boolean called, Fate fate) {
        this.rows = rows;
        this.called = called;
        this.fate = fate;
    }

    /// What the pupil writes.
    ///
    /// @param called whether the rows are heard, not seen
    public static long writes(List<Long> rows, boolean called, Fate fate) {
        MindPupil pupil = new MindPupil(rows, called, fate);
        for (int i = 0; i < rows.size(); i++) {
            pupil.row(i);
        }
        return new Pencil(fate).writes(pupil.total);
    }

    private void row(int i) {
        int row = i + 1;
        if (!fate.falls(SlipKind.ROW_SKIPPED, row, Fate.NO_ROD, 1)) {
            boolean minus = isMinus(i);
            String figures = taken(row, Long.toString(Math.abs(rows.get(i))));
            int times = fate.falls(SlipKind.ROW_TWICE, row, Fate.NO_ROD, 1) ? 2 : 1;
            for (int time = 1; time <= times; time++) {
                for (int at = 0; at < figures.length(); at++) {
                    int place = figures.length() - 1 - at;
                    work(row, place, (minus ? -1 : 1) * (figures.charAt(at) - '0'));
                }
            }
        }
        if (row < rows.size()) {
            keep(row);
        }
    }

    private boolean isMinus(int i) {
        boolean minus = rows.get(i) < 0;
        double weight = minus ? 1 : i > 0 && rows.get(i - 1) < 0 ? 0.3 : 0;
        boolean missed = weight > 0 && fate.falls(SlipKind.SIGN_MISSED, i + 1, Fate.NO_ROD, weight);
        return minus != missed;
    }

    /// The figures as they were heard or seen.
    private String taken(int row, String figures) {
        StringBuilder taken = new StringBuilder();
        for (int at = 0; at < figures.length(); at++) {
            taken.append(digit(row, figures.length() - 1 - at, figures.charAt(at) - '0'));
        }
        for (int at = 1; at < figures.length(); at++) {
            int place = figures.length() - at - 1;
            if (fate.falls(SlipKind.DIGITS_SWAPPED_READING, row, place, 1)) {
                char left = taken.charAt(at - 1);
                taken.setCharAt(at - 1, taken.charAt(at));
                taken.setCharAt(at, left);
                return taken.toString();
            }
        }
        if (called && fate.falls(SlipKind.PLACE_MISHEARD, row, Fate.NO_ROD, 1)) {
            boolean smaller = taken.charAt(taken.length() - 1) == '0';
            return smaller ? taken.substring(0, taken.length() - 1) : taken + "0";
        }
        return taken.toString();
    }

    private int digit(int row, int place, int digit) {
        if (digit != 0 && fate.falls(SlipKind.DIGIT_SKIPPED, row, place, 1)) {
            return 0;
        }
        SlipKind kind = called ? SlipKind.DIGIT_MISHEARD : SlipKind.DIGIT_MISREAD;
        int taken = digit;
        for (int as = 0; as <= 9; as++) {
            String pair = "" + Math.min(digit, as) + Math.max(digit, as);
            double weight = called && ALIKE.contains(pair) ? 0.3 : 0.08;
            if (as != digit && fate.falls(kind, row, place, weight)) {
                taken = as;
            }
        }
        return taken;
    }

    /// Adds a digit, which may be below zero, and what it carries or borrows.
    private void work(int row, int place, int digit) {
        long unit = Math.powExact(10L, place);
        int held = (int) Math.floorMod(Math.floorDiv(total, unit), 10L);
        boolean carries = held + digit > 9;
        boolean borrows = held + digit < 0 && total >= 10 * unit;
        total += digit * unit;
        if ((carries || borrows) && fate.falls(SlipKind.CARRY_LOST, row, place + 1, 1)) {
            total += (carries ? -10 : 10) * unit;
        }
    }

    /// Keeps the total until the next row comes: a digit of it may become one more or less, or two
    /// of them change places.
    private void keep(int row) {
        String figures = Long.toString(Math.abs(total));
        int sign = total < 0 ? -1 : 1;
        for (int at = 0; at < figures.length(); at++) {
            int place = figures.length() - 1 - at;
            long unit = sign * Math.powExact(10L, place);
            int digit = figures.charAt(at) - '0';
            if (digit < 9 && fate.falls(SlipKind.TOTAL_NOT_KEPT, row, place, 0.35)) {
                total += unit;
            } else if (digit > 0 && fate.falls(SlipKind.TOTAL_NOT_KEPT, row, place, 0.35)) {
                total -= unit;
            } else if (at > 0 && fate.falls(SlipKind.TOTAL_NOT_KEPT, row, place, 0.3)) {
                total += 9 * unit * (digit - (figures.charAt(at - 1) - '0'));
            }
        }
    }
}
