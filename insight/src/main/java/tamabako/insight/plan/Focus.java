package tamabako.insight.plan;

import tamabako.insight.slip.Move;
import tamabako.insight.slip.SlipKind;

/// What a problem is practised for.
public sealed interface Focus {

    /// Work as the exam has it, in a section.
    ///
    /// @param section the name that the section goes by within its grade
    record AsInExam(String section) implements Focus {}

    /// A move of the hand.
    record OfMove(Move move) implements Focus {}

    /// A kind of slip that belongs to no move.
    record OfKind(SlipKind kind) implements Focus {}

    /// The word used in files, such as `exam:columns`, `add-five-complement` or `table-slip`.
    default String word() {
        return switch (this) {
            case AsInExam(String section) -> "exam:" + section;
            case OfMove(Move move) -> move.word();
            case OfKind(SlipKind kind) -> kind.word();
        };
    }

    /// Whether it is work as the exam has it.
    default boolean isAsInExam() {
        return this instanceof AsInExam;
    }
}
