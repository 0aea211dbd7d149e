package tamabako.insight.simulation;

import java.util.List;
import java.util.OptionalLong;
import tamabako.insight.slip.SlipKind;

/// A simulated pupil who reads, works and writes a column of whole rows one after another, and
/// slips where fate will have it. What comes after a slip is done well, on the frame as it then is.
public final class ColumnPupil {

    private final List<Long> rows;
    private final Fate fate;
    private final BeadFrame frame;

    private ColumnPupil(List<Long> rows, Fate fate) {
        this.rows = rows;
        this.fate = fate;
        this.frame = new BeadFrame(fate);
    }

    /// What the pupil writes; nothing if the beads run out on the way.
    public static OptionalLong writes(List<Long> rows, Fate fate) {
        ColumnPupil pupil = new ColumnPupil(rows, fate);
        try {
            for (int i = 0; i < rows.size(); i++) {
                pupil.row(i);
            }
        } catch (BeadFrame.Stuck _) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(new Pencil(fate).writes(pupil.frame.read()));
    }

    private void row(int i) {
        int row = i + 1;
        boolean minus = rows.get(i) < 0;
        if (fate.falls(SlipKind.ROW_SKIPPED, row, Fate.NO_ROD, 1)) {
            return;
        }
        boolean afterMinus = i > 0 && rows.get(i - 1) < 0;
        double signWeight = minus ? 1 : afterMinus ? 0.3 : 0;
        if (signWeight > 0 && fate.falls(SlipKind.SIGN_MISSED, row, Fate.NO_ROD, signWeight)) {
            minus = !minus;
        }
        int shift = 0;
        if (fate.falls(SlipKind.ROW_ON_NEIGHBOUR_ROD, row, Fate.NO_ROD, 0.5)) {
            shift = 1;
        } else if (fate.falls(SlipKind.ROW_ON_NEIGHBOUR_ROD, row, Fate.NO_ROD, 0.5)) {
            shift = -1;
        }
        String figures = read(i);
        int times = fate.falls(SlipKind.ROW_TWICE, row, Fate.NO_ROD, 1) ? 2 : 1;
        for (int time = 1; time <= times; time++) {
            enter(row, figures, minus, shift);
        }
    }

    private String read(int i) {
        int row = i + 1;
        String figures = Long.toString(Math.abs(rows.get(i)));
        for (int other = i - 1; other <= i + 1; other += 2) {
            if (other < 0 || other >= rows.size()) {
                continue;
            }
            String there = Long.toString(Math.abs(rows.get(other)));
            String padded = "0".repeat(figures.length()) + there;
            for (int at = 1; at < figures.length(); at++) {
                int rest = figures.length() - at;
                if (fate.falls(SlipKind.LINE_JUMP, row, rest - 1, 0.5 / figures.length())) {
                    return figures.substring(0, at) + padded.substring(padded.length() - rest);
                }
            }
        }
        for (int at = 1; at < figures.length(); at++) {
            int place = figures.length() - at - 1;
            if (fate.falls(SlipKind.DIGITS_SWAPPED_READING, row, place, 1)) {
                return figures.substring(0, at - 1)
                        + figures.charAt(at)
                        + figures.charAt(at - 1)
                        + figures.substring(at + 1);
            }
        }
        return figures;
    }

    private void enter(int row, String figures, boolean minus, int shift) {
        for (int at = 0; at < figures.length(); at++) {
            int place = figures.length() - 1 - at;
            int digit = look(row, place, figures.charAt(at) - '0');
            int rod = place + shift;
            if (fate.falls(SlipKind.DIGIT_ON_NEIGHBOUR_ROD, row, place, 0.5)) {
                rod++;
            } else if (place > 0 && fate.falls(SlipKind.DIGIT_ON_NEIGHBOUR_ROD, row, place, 0.5)) {
                rod--;
            }
            if (rod < 0) {
                continue;
            }
            if (minus) {
                frame.take(row, rod, digit);
            } else {
                frame.add(row, rod, digit);
            }
        }
    }

    private int look(int row, int place, int digit) {
        if (digit != 0 && fate.falls(SlipKind.DIGIT_SKIPPED, row, place, 1)) {
            return 0;
        }
        int seen = digit;
        for (int as = 0; as <= 9; as++) {
            boolean other = as != digit;
            if (other && fate.falls(SlipKind.DIGIT_MISREAD, row, place, confusion(digit, as))) {
                seen = as;
            }
        }
        return seen;
    }

    /// Digits of like shape are confused; 1 and 7, 0 and 6 most.
    private static double confusion(int digit, int as) {
        String pair = "" + Math.min(digit, as) + Math.max(digit, as);
        return switch (pair) {
            case "17", "06" -> 0.4;
            case "38", "68", "56", "35", "49", "89", "08" -> 0.2;
            default -> 0.05;
        };
    }
}
