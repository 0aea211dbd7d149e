package tamabako.voice.sound;

import java.util.Locale;

/// How much of a hurried call is understood.
///
/// The shares are those of the digits of 16-digit numbers that an offline recogniser read back; how
/// they were measured, and what speaks for and against them, is told in docs/calling.md. Beyond the
/// last pace that was measured the line goes on as steeply.
public enum Understanding {
    /// As good as all of it.
    CLEAR,
    /// Most of it: for practised listeners.
    HARD,
    /// Too little of it.
    LOST;

    private static final double CLEAR_FROM = 0.96;
    private static final double HARD_FROM = 0.85;

    /// How much faster than natural the voice speaks, and the share of digits understood.
    private static final double[][] ENGLISH = {{1, 1}, {1.5, 0.98}, {1.8, 0.97}, {2.35, 0.80}};

    private static final double[][] JAPANESE = {{1, 1}, {1.35, 1}, {1.75, 0.97}, {2.25, 0.74}};

    /// The share of digits that is understood, from 0 to 1.
    ///
    /// @param hurry how much faster than natural the voice speaks, 1 for not at all
    public static double share(Locale language, double hurry) {
        double[][] measured = language.getLanguage().equals("ja") ? JAPANESE : ENGLISH;
        int at = 1;
        while (at < measured.length - 1 && hurry > measured[at][0]) {
            at++;
        }
        double[] low = measured[at - 1];
        double[] high = measured[at];
        double part = (Math.max(1, hurry) - low[0]) / (high[0] - low[0]);
        return Math.clamp(low[1] + part * (high[1] - low[1]), 0, 1);
    }

    /// What a share means for a class.
    public static Understanding of(double share) {
        if (share >= CLEAR_FROM) {
            return CLEAR;
        }
        return share >= HARD_FROM ? HARD : LOST;
    }
}
