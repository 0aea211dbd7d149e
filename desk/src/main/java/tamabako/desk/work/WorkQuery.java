package tamabako.desk.work;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import tamabako.desk.web.Fields;
import tamabako.frame.CarryOrder;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.SquareRootWay;
import tamabako.frame.TrialRule;
import tamabako.problems.Terms;

/// Reads the way of working from the fields of an address. Fields that are empty or not there stand
/// for the usual way.
final class WorkQuery {

    private WorkQuery() {}

    /// What came of reading.
    sealed interface Read {
        /// The way.
        record Good(WorkWay way) implements Read {}

        /// `field` holds what it cannot hold: `written`.
        record Bad(String field, String written) implements Read {}
    }

    static Read way(Fields query) {
        for (String field : new String[] {"rods", "places"}) {
            int most = field.equals("rods") ? Frame.MOST_RODS : Terms.MOST_PLACES;
            if (!query.text(field).isEmpty() && number(query, field, most).isEmpty()) {
                return new Read.Bad(field, query.text(field));
            }
        }
        String unit = query.text("unit");
        Optional<UnitRod> rod = UnitRod.parse(unit);
        if (!unit.isEmpty() && rod.isEmpty()) {
            return new Read.Bad("unit", unit);
        }
        return new Read.Good(
                new WorkWay(
                        frame(query.text("frame")),
                        number(query, "rods", Frame.MOST_RODS),
                        rod,
                        habits(query),
                        number(query, "places", Terms.MOST_PLACES),
                        rounding(query.text("rounding"))));
    }

    private static OptionalInt number(Fields query, String field, int most) {
        String written = query.text(field);
        if (!written.matches("\\d{1,2}") || Integer.parseInt(written) > most) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(written));
    }

    private static FrameKind frame(String word) {
        for (FrameKind kind : FrameKind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(word)) {
                return kind;
            }
        }
        return FrameKind.MODERN;
    }

    private static Habits habits(Fields query) {
        Habits habits = Habits.COMMON;
        if (query.text("carry").equals("first")) {
            habits = habits.with(CarryOrder.CARRY_THEN_REMOVE);
        }
        if (query.text("trial").equals("rounded")) {
            habits = habits.with(TrialRule.ROUNDED_FIRST_DIGIT);
        }
        if (query.text("root").equals("double")) {
            habits = habits.with(SquareRootWay.DOUBLE_ROOT);
        }
        return habits;
    }

    private static Optional<Rounding> rounding(String word) {
        return switch (word) {
            case "half-up" -> Optional.of(Rounding.HALF_UP);
            case "down" -> Optional.of(Rounding.DOWN);
            default -> Optional.empty();
        };
    }
}
