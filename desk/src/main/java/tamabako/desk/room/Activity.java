package tamabako.desk.room;

import java.util.List;
import tamabako.problems.Problem;
import tamabako.problems.marking.WritingRules;

/// What a room does in one round. Whatever else a class may do together, such as listening to a
/// call, becomes a case of its own here, and the compiler shows every place that has to know it.
public sealed interface Activity {

    /// Problems that are seen, worked and answered in writing.
    ///
    /// @param problems in their order, one at least
    /// @param rules how strictly the form of an answer is looked at
    record Written(List<Problem> problems, WritingRules rules) implements Activity {
        public Written {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("A round has one problem at least.");
            }
        }
    }

    /// How many answers a seat can give.
    default int answers() {
        return switch (this) {
            case Written written -> written.problems().size();
        };
    }
}
