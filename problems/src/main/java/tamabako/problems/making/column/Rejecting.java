package tamabako.problems.making.column;

import java.util.List;
import tamabako.problems.making.draw.Draws;

/// Keeps of another source only what meets the conditions: what is left is drawn as evenly as
/// before.
final class Rejecting implements Source {

    private final Source source;
    private final Checks checks;

    Rejecting(Source source, List<Condition> conditions) {
        this.source = source;
        this.checks =
                new Checks(
                        conditions.stream()
                                .filter(condition -> !source.grants(condition))
                                .toList());
    }

    @Override
    public boolean draw(Draws draws, Facts into) {
        return source.draw(draws, into) && checks.areMet(into);
    }
}
