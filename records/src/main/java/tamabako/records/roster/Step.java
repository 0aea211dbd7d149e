package tamabako.records.roster;

import java.util.List;
import tamabako.records.Pupil;

/// What a line of a roster does to the book.
public sealed interface Step {

    /// The line.
    Place place();

    /// The pupil as the book has it afterwards.
    Pupil pupil();

    /// The name of the pupil's group afterwards.
    String group();

    /// A pupil who is not in the book yet.
    record Added(Place place, Pupil pupil, String group) implements Step {}

    /// A pupil of whom something changes.
    record Changed(Place place, Pupil pupil, String group, List<Difference> differences)
            implements Step {
        public Changed {
            differences = List.copyOf(differences);
        }

        /// Whether the pupil goes to another group.
        public boolean moved() {
            return differences.stream().anyMatch(one -> one.field() == Field.GROUP);
        }
    }

    /// A pupil of whom the book knows all this already.
    record Same(Place place, Pupil pupil, String group) implements Step {}
}
