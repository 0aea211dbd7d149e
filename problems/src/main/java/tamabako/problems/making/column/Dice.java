package tamabako.problems.making.column;

import tamabako.problems.making.draw.Draws;

/// Several even numbers from one draw of 64 bits.
///
/// The bits are read as a fraction. Times the first bound its whole part is the first number; what
/// is left is a fraction again, and so on. The few fractions that would make some throws likelier
/// than others are drawn again (Brackett-Rozinsky and Lemire, "Batched ranged random integer
/// generation", Software: Practice and Experience 2025).
final class Dice {

    /// How many dice of up to 230 sides can be thrown at once.
    static final int AT_ONCE = 8;

    private Dice() {}

    /// Throws `count` dice. Their sides, multiplied, are less than 2^63.
    ///
    /// @param sides how many sides the dice have, from index `from` on
    /// @param into gets numbers from 0 to below the sides
    static void roll(Draws draws, int[] sides, int from, int count, int[] into) {
        long left = draws.bits();
        while (!rolls(left, sides, from, count, into)) {
            left = draws.bits();
        }
    }

    private static boolean rolls(long bits, int[] sides, int from, int count, int[] into) {
        long left = bits;
        long all = 1;
        for (int i = 0; i < count; i++) {
            int bound = sides[from + i];
            into[i] = (int) Math.unsignedMultiplyHigh(left, bound);
            left *= bound;
            all *= bound;
        }
        return Long.compareUnsigned(left, all) >= 0
                || Long.compareUnsigned(left, Long.remainderUnsigned(-all, all)) >= 0;
    }
}
