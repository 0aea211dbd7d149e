package tamabako.paper;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.frame.Rounding;
import tamabako.paper.wish.Part;
import tamabako.paper.wish.PrintWish;
import tamabako.paper.wish.Size;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;

/// Sheets of every kind, drawn from a seed.
final class DrawnSheets {

    private DrawnSheets() {}

    /// A sheet of one to three sections, each of one kind.
    static Sheet sheet(Draw draw) {
        List<Problem> problems = new ArrayList<>();
        int sections = draw.between(1, 3);
        for (int i = 0; i < sections; i++) {
            problems.addAll(section(draw, draw.between(1, draw.chance(1, 20) ? 200 : 20)));
        }
        List<Problem> numbered = new ArrayList<>();
        for (Problem problem : problems) {
            numbered.add(problem.withId(String.valueOf(numbered.size() + 1)));
        }
        String title = draw.oneOf(List.of("Practice", "みとり算 第3回", "Thursday & <friends>", "総合 11"));
        return new Sheet("s" + draw.between(1000, 9999), title, numbered);
    }

    /// A sheet of columns only, under the ids 1, 2, 3...
    static Sheet columns(Draw draw) {
        int digits = draw.between(1, 16);
        Terms terms = draw.chance(1, 3) ? Terms.PLAIN.withUnit("JPY") : Terms.PLAIN;
        List<Problem> columns = new ArrayList<>();
        for (int i = 1; i <= draw.between(1, 12); i++) {
            columns.add(column(draw, 20, digits, terms).withId(String.valueOf(i)));
        }
        return new Sheet("c1", "Columns", columns);
    }

    /// A sheet on which no two neighbours are of one kind.
    static Sheet mixed(Draw draw) {
        List<Problem> problems = new ArrayList<>();
        int count = draw.chance(1, 10) ? draw.between(40, 100) : draw.between(1, 25);
        int digits = draw.between(1, 10);
        int rows = draw.between(1, 12);
        boolean modes = draw.chance(1, 3);
        int kind = 0;
        for (int i = 1; i <= count; i++) {
            kind = (kind + draw.between(0, 2)) % 4 + 1;
            int places = draw.between(0, 3);
            Mode mode = modes ? draw.oneOf(List.of(Mode.values())) : Mode.FRAME;
            Terms terms = terms(draw, kind, places).withMode(mode);
            int shape = kind == 4 ? draw.between(4, 5) : kind;
            problems.add(
                    problem(draw, shape, rows, digits, places, terms).withId(String.valueOf(i)));
        }
        return new Sheet("m" + draw.between(1000, 9999), "Mixed 総合", problems);
    }

    /// A wish for one part.
    static PrintWish wish(Draw draw, Part part) {
        return new PrintWish(
                draw.oneOf(List.of(Locale.ENGLISH, Locale.JAPANESE)),
                part,
                draw.oneOf(List.of(Size.values())),
                Optional.empty(),
                Optional.empty());
    }

    private static List<Problem> section(Draw draw, int count) {
        List<Problem> problems = new ArrayList<>();
        int kind = draw.between(1, 4);
        int digits = draw.between(1, 16);
        int rows = draw.between(1, 20);
        int places = draw.between(0, 3);
        Terms terms = terms(draw, kind, places);
        int degree = draw.between(2, 3);
        for (int i = 0; i < count; i++) {
            problems.add(problem(draw, kind == 4 ? 2 + degree : kind, rows, digits, places, terms));
        }
        return problems;
    }

    /// @param kind 1 a column, 2 a product, 3 a quotient, 4 a square root, 5 a cube root
    private static Problem problem(
            Draw draw, int kind, int rows, int digits, int places, Terms terms) {
        return switch (kind) {
            case 1 -> column(draw, rows, digits, terms);
            case 2 -> new Product("", number(draw, 7, 0), number(draw, 6, places), terms);
            case 3 -> new Quotient("", number(draw, 9, places), number(draw, 4, 0), terms);
            default -> new Root("", kind - 2, number(draw, 9, 0), terms);
        };
    }

    private static Terms terms(Draw draw, int kind, int places) {
        Terms plain =
                draw.chance(1, 4)
                        ? Terms.PLAIN.withUnit(draw.oneOf(List.of("JPY", "USD", "EUR")))
                        : Terms.PLAIN;
        if (kind == 1) {
            return plain;
        }
        Terms rounded = draw.chance(1, 2) ? plain.withRounding(Rounding.DOWN) : plain;
        return draw.chance(1, 2) ? rounded.withPlaces(places) : rounded;
    }

    private static Column column(Draw draw, int rows, int digits, Terms terms) {
        boolean decimals = terms.unit().isEmpty() && draw.chance(1, 3);
        List<BigDecimal> numbers = new ArrayList<>();
        for (int i = 0; i < draw.between(1, rows); i++) {
            int places = decimals ? draw.between(0, 3) : 0;
            BigDecimal number = draw.decimal(draw.between(1, digits) + places, places);
            numbers.add(draw.chance(1, 4) ? number.negate() : number);
        }
        return new Column("", numbers.isEmpty() ? List.of(BigDecimal.ONE) : numbers, terms);
    }

    private static BigDecimal number(Draw draw, int mostDigits, int places) {
        return draw.decimal(draw.between(1, mostDigits), draw.between(0, places));
    }
}
