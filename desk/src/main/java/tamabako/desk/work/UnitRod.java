package tamabako.desk.work;

import java.util.Locale;
import java.util.Optional;
import tamabako.frame.Frame;

/// The place of the unit rod on its frame, counted from the left, from 1. Handbooks letter the rods
/// A, B, C ... from the left; the rods after Z go by their number.
public record UnitRod(int fromLeft) {

    private static final int LETTERS = 26;

    public UnitRod {
        if (fromLeft < 1 || fromLeft > Frame.MOST_RODS) {
            throw new IllegalArgumentException(
                    "A frame has rods 1 to %d, not %d.".formatted(Frame.MOST_RODS, fromLeft));
        }
    }

    /// The unit rod of a frame.
    public static UnitRod of(Frame frame) {
        return new UnitRod(frame.highest() + 1);
    }

    /// Reads a letter (`H`) or a number (`8`); empty for anything else.
    public static Optional<UnitRod> parse(String written) {
        String text = written.strip().toUpperCase(Locale.ROOT);
        for (int rod = 1; rod <= Frame.MOST_RODS; rod++) {
            if (text.equals(String.valueOf(rod)) || text.equals(new UnitRod(rod).letter())) {
                return Optional.of(new UnitRod(rod));
            }
        }
        return Optional.empty();
    }

    /// The letter that handbooks give this rod, or its number.
    public String letter() {
        return fromLeft > LETTERS
                ? String.valueOf(fromLeft)
                : String.valueOf((char) ('A' + fromLeft - 1));
    }
}
