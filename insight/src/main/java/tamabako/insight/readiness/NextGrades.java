package tamabako.insight.readiness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.grade.Ladder;

/// The grades of a ladder that are next for a pupil.
///
/// @param forecast tells how ready the pupil is
/// @param outlines of the grades
public record NextGrades(Forecast forecast, Outlines outlines) {

    /// A grade that is passed with this chance lies behind the pupil.
    private static final double BEHIND = 0.9;

    /// The first grade that does not lie behind the pupil and those after it, `most` at the most;
    /// the last grade where all lie behind. Grades of which no paper can be made are left out.
    public List<Readiness> of(Standing standing, Ladder ladder, int most) {
        List<Readiness> next = new ArrayList<>();
        Optional<Readiness> last = Optional.empty();
        for (int i = 0; i < ladder.grades().size() && next.size() < most; i++) {
            Optional<Readiness> here =
                    outlines.of(ladder.id(), ladder.grades().get(i))
                            .map(outline -> forecast.of(standing, outline));
            boolean behind = here.filter(NextGrades::isBehind).isPresent();
            if (here.isPresent() && (!behind || !next.isEmpty())) {
                next.add(here.get());
            }
            last = here.isPresent() ? here : last;
        }
        return next.isEmpty() ? last.stream().toList() : next;
    }

    /// A grade with ranks lies behind only with its highest one.
    private static boolean isBehind(Readiness readiness) {
        Optional<Chance> chance =
                readiness.ranks().isEmpty()
                        ? readiness.pass()
                        : Optional.of(readiness.ranks().getLast().chance());
        return chance.filter(one -> one.likely() >= BEHIND).isPresent();
    }
}
