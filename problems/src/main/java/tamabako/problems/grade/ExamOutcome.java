package tamabako.problems.grade;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/// What came of an exam for one pupil.
///
/// @param day when it was held
/// @param ladder the name of the ladder
/// @param grade the name the grade goes by within its ladder
/// @param came what came of it
/// @param rank the name of the highest rank reached, of a grade that has ranks; empty elsewhere,
///   and where none was reached
/// @param points those of each section, by the name of the section, as far as they are known
public record ExamOutcome(
        LocalDate day,
        String ladder,
        String grade,
        Came came,
        Optional<String> rank,
        Map<String, Integer> points) {

    public ExamOutcome {
        points = Map.copyOf(points);
        if (rank.isPresent() && came != Came.PASSED) {
            throw new IllegalArgumentException(
                    "Who reached the rank %s has passed, and is not %s."
                            .formatted(rank.get(), came));
        }
    }

    /// What may come of an exam.
    public enum Came {
        /// The grade was passed, or a rank was reached.
        PASSED,
        /// It was sat, and not passed.
        NOT_PASSED,
        /// The pupil was to sit it, and did not.
        NOT_SAT;

        /// The word used in files and forms, such as `not-passed`.
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /// The one of that word, if there is one.
        public static Optional<Came> find(String word) {
            return Stream.of(values()).filter(one -> one.word().equals(word)).findFirst();
        }
    }

    /// Whether it was sat, so that it says something of the pupil.
    public boolean isSat() {
        return came != Came.NOT_SAT;
    }
}
