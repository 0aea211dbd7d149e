package tamabako.insight.slip;

import java.util.Optional;
import java.util.Set;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;

/// What a problem asks for, whatever was answered: all that a right answer tells.
///
/// @param occasions how many occasions for slips there are, by [Slot]
/// @param steps how many steps of the hand there are, by index of their [Move]
/// @param cells how many there are, by index of their [Cell]
@SuppressWarnings("ArrayRecordComponent") // handed on within the package, compared by nobody
record Tally(double[] occasions, int[] steps, int[] cells) {

    /// That of all slips of a problem.
    static Tally of(Events slips) {
        return new Tally(slips.occasions(), slips.steps(), slips.cells());
    }

    /// That of `problem`; empty where its slips have to be listed for it.
    static Optional<Tally> of(Problem problem, Set<Omission> omitted) {
        return problem instanceof Column column
                        && column.terms().mode() == Mode.FRAME
                        && omitted.isEmpty()
                ? UnitRows.of(column).map(units -> new ColumnTally(units).tally())
                : Optional.empty();
    }
}
