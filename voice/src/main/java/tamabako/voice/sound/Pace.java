package tamabako.voice.sound;

/// How fast the rows of a call follow one another.
public sealed interface Pace {

    /// The time from the start of a row to the start of the next, in seconds.
    ///
    /// @param digits the figures of the row
    /// @param spoken how long the voice takes for it when it is not hurried, in seconds
    double slot(int digits, double spoken);

    /// Each row takes the same time.
    ///
    /// @param seconds from 0.3 to 60
    record SecondsARow(double seconds) implements Pace {
        public SecondsARow {
            check(seconds, 0.3, 60, "seconds a row");
        }

        @Override
        public double slot(int digits, double spoken) {
            return seconds;
        }
    }

    /// Each figure takes the same time: at 4 a second a row of 16 figures takes 4 s.
    ///
    /// @param digits figures a second, from 0.2 to 20
    record DigitsASecond(double digits) implements Pace {
        public DigitsASecond {
            check(digits, 0.2, 20, "digits a second");
        }

        @Override
        public double slot(int figures, double spoken) {
            return Math.max(0.3, figures / digits);
        }
    }

    /// Each row takes as long as it takes, and then comes a gap.
    ///
    /// @param seconds the gap, from 0 to 60
    record Unhurried(double seconds) implements Pace {
        public Unhurried {
            check(seconds, 0, 60, "seconds of gap");
        }

        @Override
        public double slot(int digits, double spoken) {
            return spoken + seconds;
        }
    }

    private static void check(double value, double least, double most, String what) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "A pace has %s to %s %s, not %s.".formatted(least, most, what, value));
        }
    }
}
