package tamabako.problems.grade;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Mode;

/// A part of a paper: problems that are sat together.
///
/// @param id the name it goes by within its grade
/// @param batches its problems, in the order of the paper
/// @param points marks for a right answer, 1 or more
/// @param time for this section alone, where the paper has no time as a whole
/// @param mode how the problems are worked: on the frame, in the head, or called
/// @param order whether the batches follow one another or are mixed
/// @param cites where its figures come from
public record Section(
        String id,
        Label name,
        List<Batch> batches,
        int points,
        Optional<Duration> time,
        Mode mode,
        Order order,
        List<Cite> cites) {

    public Section {
        batches = List.copyOf(batches);
        cites = List.copyOf(cites);
    }

    /// How the batches of a section stand on the paper.
    public enum Order {
        /// One batch after the other, as listed.
        AS_LISTED,
        /// The problems of all batches in an order drawn by chance.
        MIXED
    }

    /// How many problems it has.
    public int count() {
        return batches.stream().mapToInt(Batch::count).sum();
    }

    /// The marks for all right answers.
    public int fullMarks() {
        return count() * points;
    }
}
