package tamabako.problems.setting;

import java.util.List;
import java.util.Optional;
import tamabako.problems.Pad;
import tamabako.problems.Problem;

/// What is set as one: a problem, or all problems that share a slip pad.
///
/// @param sort what of it the paper counts, such as `mixed` or how its answer is rounded: pieces of
///   one sort can stand for one another and the counts stay as they are
record Piece(List<Problem> problems, Optional<Pad> pad, String sort) {

    Piece {
        problems = List.copyOf(problems);
    }

    static Piece of(Problem problem, String sort) {
        return new Piece(List.of(problem), Optional.empty(), sort);
    }
}
