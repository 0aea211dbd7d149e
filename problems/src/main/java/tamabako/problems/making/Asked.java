package tamabako.problems.making;

import java.util.HashSet;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.draw.Draws;
import tamabako.problems.making.draw.Powers;

/// A column wish as the searches read it: sets of techniques as bits, rows as whole numbers.
///
/// @param lastIsPlus whether the last row is never taken
/// @param allowed the bits of the allowed techniques
/// @param required the bits of the techniques that must occur
record Asked(PlainColumns wish, boolean lastIsPlus, int allowed, int required) {

    /// Of so many columns the one with the fewest rows alike is taken.
    static final int BEST_OF = 2000;

    static Asked of(PlainColumns wish, boolean lastIsPlus) {
        return new Asked(wish, lastIsPlus, Rods.bits(wish.allowed()), Rods.bits(wish.required()));
    }

    int rows() {
        return wish.rows();
    }

    /// How many lengths a row may have.
    int lengths() {
        return wish.mostDigits() - wish.leastDigits() + 1;
    }

    /// Whether a step may pass ten, so that a total may be longer than the rows.
    boolean carries() {
        return wish.allowed().stream().anyMatch(Technique::passesTen);
    }

    long leastRow() {
        return Powers.of(wish.leastDigits() - 1);
    }

    long mostRow() {
        return Powers.of(wish.mostDigits()) - 1;
    }

    /// The chance of `row` where each length is equally likely, and each number of that length.
    double chance(long row) {
        return 1.0 / (lengths() * 9.0 * Powers.of(Powers.digits(row) - 1));
    }

    /// A row without its sign: each length is equally likely, and each number of that length.
    long drawRow(Draws draws) {
        int digits = (int) draws.between(wish.leastDigits(), wish.mostDigits());
        return draws.between(Powers.of(digits - 1), Powers.of(digits) - 1);
    }

    /// Which rows are taken: any choice that the wish allows is equally likely.
    boolean[] drawSigns(Draws draws) {
        boolean[] minus = new boolean[rows()];
        int places = rows() - (lastIsPlus ? 2 : 1);
        int left = wish.minusRows();
        for (int row = 1; left > 0; row++, places--) {
            if (draws.below(places) < left) {
                minus[row] = true;
                left--;
            }
        }
        return minus;
    }

    /// How many rows are like an earlier one, whether added or taken.
    static int repeats(long[] rows) {
        Set<Long> sizes = new HashSet<>();
        for (long row : rows) {
            sizes.add(Math.abs(row));
        }
        return rows.length - sizes.size();
    }

    /// How many rows must be like an earlier one, as there are not enough different ones.
    int fewestRepeats() {
        return (int) Math.max(0, rows() - (mostRow() - leastRow() + 1));
    }
}
