package tamabako.insight.slip;

import java.util.ArrayList;
import java.util.List;

/// One of the 180 things that a hand does on a rod: a digit added to, or taken from, what the rod
/// holds.
///
/// @param held what the rod holds before, 0 to 9
/// @param digit what is added (1 to 9) or taken (-1 to -9)
public record Cell(int held, int digit) {

    private static final int DIGITS = 19;

    /// How long an array by index is.
    public static final int COUNT = 10 * DIGITS;

    public Cell {
        if (held < 0 || held > 9 || digit < -9 || digit > 9 || digit == 0) {
            throw new IllegalArgumentException("No hand does %+d on %d.".formatted(digit, held));
        }
    }

    /// All of them, by what is held, then by digit, those that take first.
    public static List<Cell> all() {
        List<Cell> all = new ArrayList<>();
        for (int held = 0; held <= 9; held++) {
            for (int digit = -9; digit <= 9; digit++) {
                if (digit != 0) {
                    all.add(new Cell(held, digit));
                }
            }
        }
        return all;
    }

    /// The move by which it is done where it is no carry that runs on.
    public Move move() {
        return Move.of(held, digit);
    }

    /// Its number in arrays by cell, from 0; it never leaves the memory.
    public int index() {
        return index(held, digit);
    }

    static int index(int held, int digit) {
        return held * DIGITS + digit + 9;
    }
}
