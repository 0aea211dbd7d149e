package tamabako.problems.grade;

import java.util.Optional;

/// What the rows of a column or the lines of a pad are.
///
/// @param unit the currency as an ISO 4217 code, where they are amounts (meisū); empty for plain
///   numbers (mumeisū)
/// @param places how many of the digits of each row stand behind the point
public record Amounts(Optional<String> unit, int places) {

    /// Whole numbers without a unit.
    public static final Amounts PLAIN = new Amounts(Optional.empty(), 0);
}
