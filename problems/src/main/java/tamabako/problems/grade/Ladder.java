package tamabako.problems.grade;

import java.util.List;
import java.util.Optional;

/// An order of grades.
///
/// @param id the name it goes by in files, commands and addresses
/// @param about what it is good for, and what of it is known, in a sentence or two
/// @param grades from the easiest up, no two of one name
public record Ladder(String id, Label name, Label about, List<Grade> grades) {

    public Ladder {
        grades = List.copyOf(grades);
    }

    /// The grade that goes by `id`, if the ladder has it.
    public Optional<Grade> grade(String id) {
        return grades.stream().filter(grade -> grade.id().equals(id)).findFirst();
    }
}
