package tamabako.insight.slip;

import java.util.Arrays;

/// A kind of slip in a move, as one small number: rates and occasions are kept by slot.
final class Slot {

    private static final SlipKind[] KINDS = SlipKind.values();

    /// One place for slips that belong to no move, and one for each move.
    private static final int PER_KIND = 1 + Move.values().length;

    /// How many slots there are.
    static final int COUNT = KINDS.length * PER_KIND;

    /// The first slot of the kind of each [Way], by its index.
    private static final int[] OF_WAYS =
            Arrays.stream(Way.values()).mapToInt(way -> of(way.kind())).toArray();

    private Slot() {}

    /// The slot of a packed slip.
    static int of(long code) {
        return OF_WAYS[Code.wayIndex(code)] + Code.moveNumber(code);
    }

    /// The first slot of `kind`: that of its slips in no move.
    static int of(SlipKind kind) {
        return kind.index() * PER_KIND;
    }

    /// The slot of slips of `kind` in `move`.
    static int of(SlipKind kind, Move move) {
        return of(kind) + 1 + move.index();
    }

    /// The slot after the last of `kind`.
    static int after(SlipKind kind) {
        return of(kind) + PER_KIND;
    }

    static SlipKind kind(int slot) {
        return KINDS[kindIndex(slot)];
    }

    static int kindIndex(int slot) {
        return slot / PER_KIND;
    }

    /// The index of the move from 0; -1 for none.
    static int moveIndex(int slot) {
        return slot % PER_KIND - 1;
    }

    /// The index of the [Strand] of a slot.
    static int strand(int slot) {
        int move = moveIndex(slot);
        return move >= 0 ? move : Move.values().length + kindIndex(slot);
    }
}
