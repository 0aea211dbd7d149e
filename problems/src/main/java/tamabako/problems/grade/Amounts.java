package tamabako.problems.grade;

import java.util.Optional;

/// What the rows of a column or the lines of a pad are.
///
/// @param unit the currency as an ISO 4217 code, where they are amounts (meisū); empty for plain
///   numbers (mumeisū)
/// @param places how many decimals each row has. Its digits are counted from the first that is not
///   0, so that with two places 4.56 has three digits, 0.45 two and 0.07 one
public record Amounts(Optional<String> unit, int places) {

    /// Whole numbers without a unit.
    public static final Amounts PLAIN = new Amounts(Optional.empty(), 0);
}
