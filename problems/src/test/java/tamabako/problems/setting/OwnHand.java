package tamabako.problems.setting;

import java.math.BigDecimal;
import java.util.Set;
import java.util.TreeSet;

/// Works a column digit by digit from the left and notes by which techniques, written from the
/// handbooks' rules and sharing nothing with the frame.
///
/// Source: K. Tochio, Computation on the Soroban (1912), and Heffelfinger and Flom, Abacus: Mystery
/// of the Bead: complement first, then the carry; borrow first, then the complement.
final class OwnHand {

    private static final int RODS = 20;

    private final int[] rods = new int[RODS];
    private final TreeSet<Character> used = new TreeSet<>();
    private final TreeSet<Character> taken = new TreeSet<>();
    private boolean ranOn;

    /// The techniques of all rows but the first, as letters D F T M in the order of the alphabet.
    static OwnHand of(Iterable<BigDecimal> rows) {
        OwnHand hand = new OwnHand();
        boolean first = true;
        for (BigDecimal row : rows) {
            String figures = DigitCount.of(row);
            for (int i = 0; i < figures.length(); i++) {
                int digit = figures.charAt(i) - '0';
                int rod = figures.length() - 1 - i;
                if (first) {
                    hand.rods[rod] = digit;
                } else if (digit > 0) {
                    hand.step(rod, digit, row.signum() > 0, false);
                }
            }
            first = false;
        }
        return hand;
    }

    String used() {
        return letters(used);
    }

    /// The techniques by which something is taken.
    String taken() {
        return letters(taken);
    }

    private static String letters(Set<Character> techniques) {
        StringBuilder letters = new StringBuilder();
        techniques.forEach(letters::append);
        return letters.toString();
    }

    /// Whether a carry or borrow itself carried or borrowed.
    boolean ranOn() {
        return ranOn;
    }

    /// Taking is adding to what a rod lacks to nine.
    private void step(int rod, int digit, boolean adds, boolean carried) {
        int held = adds ? rods[rod] : 9 - rods[rod];
        if (held + digit <= 9) {
            note(slides(held, digit) ? 'D' : 'F', adds);
            rods[rod] += adds ? digit : -digit;
            return;
        }
        ranOn |= carried;
        note(slides(9 - held, 10 - digit) ? 'T' : 'M', adds);
        rods[rod] += adds ? digit - 10 : 10 - digit;
        step(rod + 1, 1, adds, true);
    }

    private void note(char technique, boolean adds) {
        used.add(technique);
        if (!adds) {
            taken.add(technique);
        }
    }

    /// Whether `digit` goes onto `held` without help of the five.
    private static boolean slides(int held, int digit) {
        return held / 5 + digit / 5 <= 1 && held % 5 + digit % 5 <= 4;
    }
}
