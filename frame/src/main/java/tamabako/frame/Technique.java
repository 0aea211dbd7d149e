package tamabako.frame;

import java.util.Locale;
import java.util.function.BiFunction;

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

    private static final Technique[] ADDING = table(Technique::ofAdding);
    private static final Technique[] TAKING = table(Technique::ofTaking);

    /// How `digit` (1 to 9) is added to a rod that holds `held` (0 to 9) in the plain way.
    public static Technique ofAdding(int held, int digit) {
        checkHeld(held);
        checkDigit(digit);
        return ADDING[10 * held + digit];
    }

    /// How `digit` (1 to 9) is taken from a rod that holds `held` (0 to 9) in the plain way.
    public static Technique ofTaking(int held, int digit) {
        checkHeld(held);
        checkDigit(digit);
        return TAKING[10 * held + digit];
    }

    /// How `digit` (1 to 9) is added to `held`, however its beads stand: directly if no bead has to
    /// move back for it, and past ten only if the rod would hold more than 9.
    public static Technique ofAdding(Rod held, int digit) {
        checkDigit(digit);
        if (held.value() + digit <= 9) {
            return crosses(held, held.adding(digit)) ? FIVE_COMPLEMENT : DIRECT;
        }
        return crosses(held, held.taking(10 - digit)) ? TEN_WITH_FIVE : TEN_COMPLEMENT;
    }

    /// How `digit` (1 to 9) is taken from `held`, however its beads stand: directly if no bead has
    /// to move back for it, and by a borrowed ten only if the rod holds too little.
    public static Technique ofTaking(Rod held, int digit) {
        checkDigit(digit);
        if (held.value() >= digit) {
            return crosses(held, held.taking(digit)) ? FIVE_COMPLEMENT : DIRECT;
        }
        return crosses(held, held.adding(10 - digit)) ? TEN_WITH_FIVE : TEN_COMPLEMENT;
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

    /// Whether upper and lower beads move opposite ways, one toward the beam and one away from it.
    private static boolean crosses(Rod before, Rod after) {
        return (after.upper() - before.upper()) * (after.lower() - before.lower()) < 0;
    }

    private static Technique[] table(BiFunction<Rod, Integer, Technique> rule) {
        Technique[] table = new Technique[100];
        for (int held = 0; held <= 9; held++) {
            for (int digit = 1; digit <= 9; digit++) {
                table[10 * held + digit] = rule.apply(Rod.showing(held), digit);
            }
        }
        return table;
    }

    private static void checkHeld(int held) {
        if (held < 0 || held > 9) {
            throw new IllegalArgumentException("A plain rod holds 0 to 9, not %d.".formatted(held));
        }
    }

    private static void checkDigit(int digit) {
        if (digit < 1 || digit > 9) {
            throw new IllegalArgumentException(
                    "1 to 9 is added or taken, not %d.".formatted(digit));
        }
    }
}
