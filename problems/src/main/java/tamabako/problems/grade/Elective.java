package tamabako.problems.grade;

import java.util.List;

/// Sections of which a pupil sits only some.
///
/// @param choose how many are sat
/// @param of the names of the sections to choose from
public record Elective(int choose, List<String> of) {

    public Elective {
        of = List.copyOf(of);
        if (choose < 1 || choose >= of.size()) {
            throw new IllegalArgumentException("%d of %s is no choice.".formatted(choose, of));
        }
    }
}
