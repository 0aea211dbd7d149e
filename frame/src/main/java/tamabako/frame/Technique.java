package tamabako.frame;

import java.util.Locale;

/// How one digit goes on a rod or comes off it.
///
/// The whole table has 90 cases each way: 35 direct, 10 five-complement, 35 ten-complement and 10
/// ten with five. Source: rules of K. Tochio, Computation on the Soroban (1912), and Heffelfinger
/// and Flom, Abacus: Mystery of the Bead.
public enum Technique {
    /// The beads are there: move them.
    DIRECT,
    /// Five with the upper bead, the rest given back with lower beads (+3 = +5 -2), or the reverse.
    FIVE_COMPLEMENT,
    /// The complement to ten on this rod, and one on the next (+8 = -2 +10), or the reverse.
    TEN_COMPLEMENT,
    /// A ten-complement whose complement itself needs the five (+6 = +1 -5 +10), or the reverse.
    TEN_WITH_FIVE;

    /// How `digit` (1 to 9) is added to a rod that holds `held` (0 to 9).
    public static Technique ofAdding(int held, int digit) {
        checkDigits(held, digit);
        if (held + digit <= 9) {
            return held % 5 + digit % 5 <= 4 ? DIRECT : FIVE_COMPLEMENT;
        }
        return comesOffDirectly(held, 10 - digit) ? TEN_COMPLEMENT : TEN_WITH_FIVE;
    }

    /// How `digit` (1 to 9) is taken from a rod that holds `held` (0 to 9).
    public static Technique ofTaking(int held, int digit) {
        checkDigits(held, digit);
        if (held >= digit) {
            return comesOffDirectly(held, digit) ? DIRECT : FIVE_COMPLEMENT;
        }
        return held % 5 + (10 - digit) % 5 <= 4 ? TEN_COMPLEMENT : TEN_WITH_FIVE;
    }

    /// Whether one is carried to the next rod, or borrowed from it.
    public boolean passesTen() {
        return this == TEN_COMPLEMENT || this == TEN_WITH_FIVE;
    }

    /// The word used in files and commands: `direct`, `five-complement`, `ten-complement`,
    /// `ten-with-five`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static boolean comesOffDirectly(int held, int digit) {
        return held % 5 >= digit % 5 && (digit < 5 || held >= 5);
    }

    private static void checkDigits(int held, int digit) {
        if (held < 0 || held > 9 || digit < 1 || digit > 9) {
            throw new IllegalArgumentException(
                    "A rod holds 0 to 9 and 1 to 9 is added or taken, not %d and %d."
                            .formatted(held, digit));
        }
    }
}
