package tamabako.voice.sound;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

    /// Reads a pace as people write it: `3s`, `4d` or `+1`.
    ///
    /// @return nothing where it is none, or out of range
    static Optional<Pace> parse(String written) {
        Matcher read = Pattern.compile("(\\+?)(\\d{1,3}(?:\\.\\d{1,3})?)([sd]?)").matcher(written);
        if (!read.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(read.group(2));
        try {
            return switch (read.group(1) + read.group(3)) {
                case "s" -> Optional.of(new SecondsARow(value));
                case "d" -> Optional.of(new DigitsASecond(value));
                case "+" -> Optional.of(new Unhurried(value));
                default -> Optional.empty();
            };
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }

    private static void check(double value, double least, double most, String what) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "A pace has %s to %s %s, not %s.".formatted(least, most, what, value));
        }
    }
}
