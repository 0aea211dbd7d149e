package tamabako.insight.slip;

import java.util.ArrayList;
import java.util.List;

/// What a pupil does more or less often wrong than others as one: a move of the hand, whatever goes
/// wrong in it, or a kind of slip that belongs to no move, such as skipping a row.
public sealed interface Strand {

    /// A move of the hand.
    record OfMove(Move move) implements Strand {}

    /// A kind of slip in no move.
    record OfKind(SlipKind kind) implements Strand {}

    /// How many strands there are.
    int COUNT = Move.values().length + SlipKind.values().length;

    /// All strands; the index of each is its place here.
    static List<Strand> all() {
        List<Strand> all = new ArrayList<>();
        for (Move move : Move.values()) {
            all.add(new OfMove(move));
        }
        for (SlipKind kind : SlipKind.values()) {
            all.add(new OfKind(kind));
        }
        return all;
    }

    /// Its number in arrays by strand, 0 to [#COUNT] - 1.
    default int index() {
        return switch (this) {
            case OfMove(Move move) -> move.index();
            case OfKind(SlipKind kind) -> Move.values().length + kind.index();
        };
    }
}
