package tamabako.desk.room;

import java.util.List;
import tamabako.desk.showing.Look;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.marking.WritingRules;

/// What a room does in one round. Whatever else a class may do together becomes a case of its own
/// here, and the compiler shows every place that has to know it.
public sealed interface Activity {

    /// Problems that are seen, worked and answered in writing.
    ///
    /// @param problems in their order, one at least
    /// @param rules how strictly the form of an answer is looked at
    record Written(List<Problem> problems, WritingRules rules) implements Activity {
        public Written {
            problems = atLeastOne(problems);
        }
    }

    /// Columns that are called one after another on the teacher's machine; pupils hear them and
    /// write the answers.
    ///
    /// @param columns in their order, one at least
    /// @param calling how they are called
    record Called(List<Column> columns, Calling calling) implements Activity {
        public Called {
            columns = atLeastOne(columns);
            if (calling.paces().size() != columns.size()) {
                throw new IllegalArgumentException(
                        "%d columns are called at %d paces."
                                .formatted(columns.size(), calling.paces().size()));
            }
        }
    }

    /// Columns whose numbers are shown one after another, for work in the head.
    ///
    /// @param columns in their order, one at least
    /// @param pace how fast the numbers come
    /// @param look as what they are shown
    /// @param anySize as large as the screen allows, which only a slow pace may be
    /// @param screen where they are shown
    record Shown(
            List<Column> columns,
            tamabako.desk.showing.Pace pace,
            Look look,
            boolean anySize,
            Screen screen)
            implements Activity {

        /// The marks that count in before the first number take so long, in milliseconds.
        private static final long COUNT_IN = 3_000;

        public Shown {
            columns = atLeastOne(columns);
            if (anySize && !pace.isSlowEnoughForAnySize()) {
                throw new IllegalArgumentException(
                        "Numbers of any size take 360 ms at least, not %s ms."
                                .formatted(pace.period()));
            }
        }

        /// The least time from its beginning to the end of its last number, in milliseconds.
        long lasts(int problem) {
            int rows = columns.get(problem).rows().size();
            return COUNT_IN + Math.round((rows - 1) * pace.period() + pace.shown());
        }
    }

    /// Where numbers are shown.
    enum Screen {
        /// On the projector; the tablets take the answers alone.
        BOARD,
        /// On each tablet.
        TABLETS
    }

    private static <P> List<P> atLeastOne(List<P> problems) {
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("A round has one problem at least.");
        }
        return List.copyOf(problems);
    }

    /// The problems in their order.
    default List<Problem> problems() {
        return switch (this) {
            case Written(var problems, _) -> problems;
            case Called(var columns, _) -> List.copyOf(columns);
            case Shown shown -> List.copyOf(shown.columns());
        };
    }

    /// How strictly the form of an answer is looked at.
    default WritingRules rules() {
        return switch (this) {
            case Written(_, WritingRules rules) -> rules;
            case Called _, Shown _ -> WritingRules.EASY;
        };
    }

    /// Whether the problems come one after another, for all at the same time.
    default boolean inTurn() {
        return switch (this) {
            case Written _ -> false;
            case Called _, Shown _ -> true;
        };
    }

    /// How pupils drop out.
    default Contest contest() {
        return switch (this) {
            case Called(_, Calling calling) -> calling.contest();
            case Written _, Shown _ -> Contest.NONE;
        };
    }

    /// How many answers a seat can give.
    default int answers() {
        return problems().size();
    }

    /// The word for it in files, pages and texts.
    default String word() {
        return switch (this) {
            case Written _ -> "written";
            case Called _ -> "called";
            case Shown _ -> "shown";
        };
    }
}
