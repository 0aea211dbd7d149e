package tamabako.insight.simulation;

import tamabako.insight.slip.SlipKind;

/// A simulated pupil who sets a number on the frame, and may read or set it wrong.
final class OperandReader {

    private final Fate fate;

    OperandReader(Fate fate) {
        this.fate = fate;
    }

    /// What stands on the frame for `number`.
    long sets(long number) {
        BeadFrame frame = new BeadFrame(fate);
        String figures = swapped(Long.toString(number));
        for (int at = 0; at < figures.length(); at++) {
            int place = figures.length() - 1 - at;
            frame.add(0, place, look(place, figures.charAt(at) - '0'));
        }
        return frame.read();
    }

    private String swapped(String figures) {
        for (int at = 1; at < figures.length(); at++) {
            int place = figures.length() - at - 1;
            if (fate.falls(SlipKind.DIGITS_SWAPPED_READING, 0, place, 1)) {
                return figures.substring(0, at - 1)
                        + figures.charAt(at)
                        + figures.charAt(at - 1)
                        + figures.substring(at + 1);
            }
        }
        return figures;
    }

    private int look(int place, int digit) {
        int seen = digit;
        if (digit != 0 && fate.falls(SlipKind.DIGIT_SKIPPED, 0, place, 1)) {
            seen = 0;
        }
        for (int as = 0; as <= 9; as++) {
            if (as != digit && fate.falls(SlipKind.DIGIT_MISREAD, 0, place, 1 / 9.0)) {
                seen = as;
            }
        }
        return seen;
    }
}
