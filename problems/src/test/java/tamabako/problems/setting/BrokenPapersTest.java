package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Terms;

/// The checker sees what is broken in a paper of grade 1 that was in order.
class BrokenPapersTest {

    private static final Paper PAPER =
            SamplePapers.paper(SamplePapers.maker("abacus-one-sheet", "1"), 1);

    @Test
    void aPaperInOrderIsAccepted() {
        assertThat(PaperChecker.of(PAPER).complaints()).isEmpty();
    }

    @Test
    void aRowWithADigitMoreIsSeen() {
        assertSeen(column(1, rows -> set(rows, 4, rows.get(4).movePointRight(1))), "digits");
    }

    @Test
    void anExtraMinusRowIsSeen() {
        Column added =
                PAPER.sections().getFirst().problems().stream()
                        .map(Column.class::cast)
                        .filter(column -> column.rows().stream().allMatch(row -> row.signum() > 0))
                        .findFirst()
                        .orElseThrow();
        int number = Integer.parseInt(added.id());
        assertSeen(column(number, rows -> set(rows, 5, rows.get(5).negate())), "mixed");
    }

    @Test
    void aRowTooFewIsSeen() {
        assertSeen(column(2, rows -> rows.subList(0, 9)), "9 rows");
    }

    @Test
    void twoRowsAlikeAreSeen() {
        assertSeen(column(3, rows -> set(rows, 9, rows.get(2).abs())), "two rows alike");
    }

    @Test
    void aFirstRowThatIsTakenIsSeen() {
        assertSeen(column(4, rows -> set(rows, 0, rows.get(0).negate())), "first row");
    }

    @Test
    void aSecondAnswerBelowZeroIsSeen() {
        Column below =
                PAPER.problems().stream()
                        .filter(Column.class::isInstance)
                        .map(Column.class::cast)
                        .filter(column -> column.answer().value().signum() < 0)
                        .findFirst()
                        .orElseThrow();
        assertSeen(column(1, _ -> below.rows()), "negative");
    }

    @Test
    void aProductSetTwiceIsSeen() {
        Product product = (Product) problem(12);
        assertSeen(
                with(
                        13,
                        new Product(
                                "13",
                                product.multiplicand(),
                                product.multiplier(),
                                problem(13).terms())),
                "is there already");
    }

    @Test
    void aFactorWithADigitTooFewIsSeen() {
        Product product = (Product) problem(11);
        BigDecimal shorter =
                new BigDecimal(product.multiplicand().unscaledValue().toString().substring(1));
        assertSeen(
                with(11, new Product("11", shorter, product.multiplier(), product.terms())),
                "digits in all");
    }

    @Test
    void aTieIsSeen() {
        assertSeen(
                with(
                        11,
                        new Product(
                                "11",
                                new BigDecimal("12345"),
                                new BigDecimal("0.0001"),
                                problem(11).terms())),
                "a tie");
    }

    @Test
    void anAmountWithoutItsUnitIsSeen() {
        Product product = (Product) problem(21);
        Terms plain = Terms.PLAIN.withPoints(5).withPlaces(0);
        assertSeen(
                with(21, new Product("21", product.multiplicand(), product.multiplier(), plain)),
                "unit");
    }

    @Test
    void otherPlacesGiveAWrongKey() {
        Paper broken = PAPER;
        for (int number = 31; number <= 40; number++) {
            broken =
                    with(
                            broken,
                            number,
                            Retold.under(problem(number).terms().withPlaces(1), problem(number)));
        }
        assertSeen(broken, "key");
    }

    @Test
    void otherPointsAreSeen() {
        Problem problem = problem(45);
        assertSeen(with(45, Retold.under(problem.terms().withPoints(10), problem)), "points");
    }

    @Test
    void aWrongNumberIsSeen() {
        assertSeen(with(7, problem(7).withId("8")), "is number");
    }

    @Test
    void aSectionLeftOutIsSeen() {
        Paper broken =
                new Paper(
                        PAPER.id(),
                        PAPER.ladder(),
                        PAPER.grade(),
                        1,
                        PAPER.sections().subList(0, 2));
        assertSeen(broken, "sections");
    }

    private static void assertSeen(Paper broken, String words) {
        assertThat(PaperChecker.of(broken).complaints())
                .anySatisfy(complaint -> assertThat(complaint).contains(words));
    }

    private static Problem problem(int number) {
        return PAPER.problems().get(number - 1);
    }

    /// The paper with other rows in a column.
    private static Paper column(int number, UnaryOperator<List<BigDecimal>> change) {
        Column column = (Column) problem(number);
        return with(number, new Column(column.id(), change.apply(column.rows()), column.terms()));
    }

    private static List<BigDecimal> set(List<BigDecimal> rows, int row, BigDecimal changed) {
        List<BigDecimal> copy = new ArrayList<>(rows);
        copy.set(row, changed);
        return copy;
    }

    private static Paper with(int number, Problem changed) {
        return with(PAPER, number, changed);
    }

    /// A paper with another problem in the place of one.
    private static Paper with(Paper paper, int number, Problem changed) {
        List<PaperSection> sections = new ArrayList<>();
        int first = 1;
        for (PaperSection section : paper.sections()) {
            List<Problem> problems = new ArrayList<>(section.problems());
            int place = number - first;
            if (place >= 0 && place < problems.size()) {
                problems.set(place, changed);
            }
            sections.add(new PaperSection(section.section(), problems, section.pad()));
            first += problems.size();
        }
        return new Paper(paper.id(), paper.ladder(), paper.grade(), paper.form(), sections);
    }
}
