package tamabako.insight.slip;

import java.util.Locale;
import tamabako.frame.Technique;

/// The moves of the hand that are learned one by one, and by which mastery is told: adding and
/// taking by each technique, and a carry or borrow that runs on over a further rod.
///
/// A carry or borrow that does not run on is a move of its own technique. Leaving it out is a slip
/// of the move that it belongs to, not of the step that was not made.
public enum Move {
    ADD_DIRECT,
    ADD_FIVE_COMPLEMENT,
    ADD_TEN_COMPLEMENT,
    ADD_TEN_WITH_FIVE,
    TAKE_DIRECT,
    TAKE_FIVE_COMPLEMENT,
    TAKE_TEN_COMPLEMENT,
    TAKE_TEN_WITH_FIVE,
    /// A carry on a full rod, or a borrow from an empty one.
    CARRY_RUNS_ON;

    private static final Move[] MOVES = values();
    private static final int TECHNIQUES = Technique.values().length;

    /// The move that adds (1 to 9) or takes (-1 to -9) a digit on a rod that holds 0 to 9.
    @SuppressWarnings("EnumOrdinal")
    public static Move of(int held, int digit) {
        Technique technique =
                digit > 0 ? Technique.ofAdding(held, digit) : Technique.ofTaking(held, -digit);
        return MOVES[(digit > 0 ? 0 : TECHNIQUES) + technique.ordinal()];
    }

    /// The word used in files and commands, such as `add-five-complement`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /// Its number in packed arrays, from 0; it never leaves the memory.
    @SuppressWarnings("EnumOrdinal")
    int index() {
        return ordinal();
    }
}
