package tamabako.insight.pace;

import java.util.Locale;
import java.util.Optional;
import tamabako.insight.slip.Move;

/// A part of the work that takes its time.
public enum Part {
    ADD_DIRECT,
    ADD_FIVE_COMPLEMENT,
    ADD_TEN_COMPLEMENT,
    ADD_TEN_WITH_FIVE,
    TAKE_DIRECT,
    TAKE_FIVE_COMPLEMENT,
    TAKE_TEN_COMPLEMENT,
    TAKE_TEN_WITH_FIVE,
    CARRY_RUNS_ON,
    /// Recalling products of two digits, and finding the digits of a quotient or root.
    TABLE,
    /// Finding the problem, looking at its numbers, writing its answer.
    READING_AND_WRITING;

    private static final Part[] PARTS = values();

    /// How many parts there are.
    static final int COUNT = PARTS.length;

    /// The part of a move of the hand.
    public static Part of(Move move) {
        return valueOf(move.name());
    }

    /// The move, if it is one.
    public Optional<Move> move() {
        return this == TABLE || this == READING_AND_WRITING
                ? Optional.empty()
                : Optional.of(Move.valueOf(name()));
    }

    /// The word used in files, such as `add-five-complement`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /// Its number in arrays, from 0; it never leaves the memory.
    @SuppressWarnings("EnumOrdinal")
    int index() {
        return ordinal();
    }

    static Part at(int index) {
        return PARTS[index];
    }
}
