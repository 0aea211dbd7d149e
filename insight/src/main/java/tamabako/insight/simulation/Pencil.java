package tamabako.insight.simulation;

import tamabako.insight.slip.SlipKind;

/// A simulated pupil's pencil: writes what the beads show, or slips.
final class Pencil {

    private final Fate fate;

    /// A longer number is written as it stands on the frame: one figure more or another first one
    /// could be too large for any number here.
    private static final int MOST_FIGURES = 18;

    Pencil(Fate fate) {
        this.fate = fate;
    }

    /// What is written for `answer`.
    long writes(long answer) {
        String figures = Long.toString(Math.abs(answer));
        String written = figures;
        for (int at = 0; at < figures.length(); at++) {
            written = digit(figures, at, written);
        }
        if (fate.falls(SlipKind.WRITTEN_LENGTH, 0, Fate.NO_ROD, 0.4)) {
            written = figures + "0";
        }
        String fits = written.length() > MOST_FIGURES ? figures : written;
        return Integer.signum(Long.signum(answer)) * Long.parseLong(fits);
    }

    private String digit(String figures, int at, String otherwise) {
        String before = figures.substring(0, at);
        String after = figures.substring(at + 1);
        int place = after.length();
        String written = otherwise;
        for (char digit = '0'; digit <= '9'; digit++) {
            boolean leads = at == 0 && digit == '0' && figures.length() > 1;
            boolean other = digit != figures.charAt(at) && !leads;
            if (other && fate.falls(SlipKind.WRITTEN_DIGIT, 0, place, 1 / 9.0)) {
                written = before + digit + after;
            }
        }
        boolean zeroWouldLead = at == 0 && place > 0 && after.charAt(0) == '0';
        if (place > 0 && !zeroWouldLead && fate.falls(SlipKind.WRITTEN_SWAPPED, 0, place - 1, 1)) {
            written = before + after.charAt(0) + figures.charAt(at) + after.substring(1);
        }
        double one = 0.5 / figures.length();
        if (figures.length() > 1 && fate.falls(SlipKind.WRITTEN_LENGTH, 0, Fate.NO_ROD, one)) {
            written = before + after;
        }
        return written;
    }
}
