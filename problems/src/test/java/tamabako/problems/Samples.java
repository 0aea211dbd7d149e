package tamabako.problems;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import tamabako.frame.Rounding;
import tamabako.testkit.Draw;

/// Problems of every kind, drawn for tests.
public final class Samples {

    private Samples() {}

    /// A problem of any kind under any terms.
    public static Problem problem(Draw draw) {
        return problem(
                draw, draw.chance(1, 3) ? "" : Integer.toString(draw.between(1, 50)), terms(draw));
    }

    /// A problem of any kind under these terms.
    public static Problem problem(Draw draw, String id, Terms terms) {
        int digits = draw.length(10);
        int places = draw.chance(1, 2) ? 0 : draw.between(0, Math.min(3, digits - 1));
        return switch (draw.between(1, 4)) {
            case 1 -> column(draw, id, digits, places, terms);
            case 2 ->
                    new Product(
                            id,
                            draw.decimal(digits, places),
                            draw.decimal(draw.length(6), 0),
                            terms);
            case 3 ->
                    new Quotient(
                            id,
                            draw.decimal(digits, places),
                            draw.decimal(draw.length(6), 0),
                            terms);
            default -> new Root(id, draw.between(2, 3), draw.decimal(digits, places), terms);
        };
    }

    private static Column column(Draw draw, String id, int digits, int places, Terms terms) {
        List<BigDecimal> rows = new ArrayList<>();
        for (int i = draw.length(10); i >= 0; i--) {
            BigDecimal row = draw.decimal(digits, places);
            rows.add(draw.chance(1, 3) ? row.negate() : row);
        }
        return new Column(id, rows, terms);
    }

    private static Terms terms(Draw draw) {
        Terms terms = Terms.PLAIN;
        if (draw.chance(1, 3)) {
            terms = terms.withPlaces(draw.between(0, 5));
        }
        if (draw.chance(1, 3)) {
            terms = terms.withUnit(draw.oneOf(List.of("JPY", "USD", "EUR")));
        }
        if (draw.chance(1, 4)) {
            terms = terms.withRounding(draw.oneOf(List.of(Rounding.values())));
        }
        if (draw.chance(1, 4)) {
            terms = terms.withPoints(draw.between(0, 10));
        }
        return terms.withMode(draw.oneOf(List.of(Mode.values())));
    }
}
