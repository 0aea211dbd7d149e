package tamabako.desk.work;

import java.util.Optional;
import java.util.OptionalInt;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;

/// The way in which sums are to be worked.
///
/// @param kind the frame
/// @param rods how many rods; empty for as many as the sum needs
/// @param unit where the unit rod is; empty for where the procedure puts it
/// @param habits how the hand works
/// @param places decimal places of the answer; empty for what the sum itself says
/// @param rounding what happens beyond them; empty for what the sum itself says
public record WorkWay(
        FrameKind kind,
        OptionalInt rods,
        Optional<UnitRod> unit,
        Habits habits,
        OptionalInt places,
        Optional<Rounding> rounding) {

    /// A modern frame, as long as the sum needs, worked in the common way.
    public static final WorkWay COMMON =
            new WorkWay(
                    FrameKind.MODERN,
                    OptionalInt.empty(),
                    Optional.empty(),
                    Habits.COMMON,
                    OptionalInt.empty(),
                    Optional.empty());

    /// The same way on another frame.
    public WorkWay with(FrameKind changed) {
        return new WorkWay(changed, rods, unit, habits, places, rounding);
    }

    /// Works `problem` in this way.
    ///
    /// @throws tamabako.frame.Unworkable if it cannot be worked so
    public Worked work(Problem problem) {
        Problem asked = withTerms(problem, terms(problem.terms()));
        return new Worked(asked, habits, asked.work(setup()));
    }

    private Setup setup() {
        OptionalInt unitRod =
                unit.map(rod -> OptionalInt.of(rod.fromLeft())).orElse(OptionalInt.empty());
        return new Setup(kind, rods, unitRod, habits);
    }

    private Terms terms(Terms own) {
        Terms changed = places.isPresent() ? own.withPlaces(places.getAsInt()) : own;
        return rounding.map(changed::withRounding).orElse(changed);
    }

    private static Problem withTerms(Problem problem, Terms terms) {
        return switch (problem) {
            case Column(var id, var rows, _) -> new Column(id, rows, terms);
            case Product(var id, var multiplicand, var multiplier, _) ->
                    new Product(id, multiplicand, multiplier, terms);
            case Quotient(var id, var dividend, var divisor, _) ->
                    new Quotient(id, dividend, divisor, terms);
            case Root(var id, int degree, var of, _) -> new Root(id, degree, of, terms);
        };
    }
}
