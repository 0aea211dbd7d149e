package tamabako.paper.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.frame.Rounding;
import tamabako.paper.words.PrintWords;
import tamabako.problems.Column;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Sheet;
import tamabako.problems.Terms;

/// How a sheet is divided, and what its sections say.
class SectionTest {

    private static final Terms THREE_PLACES =
            Terms.PLAIN.withPlaces(3).withRounding(Rounding.HALF_UP);
    private static final Terms YEN = Terms.PLAIN.withUnit("JPY");

    @Test
    void aNewKindBeginsANewSection() {
        assertThat(
                        headings(
                                column(),
                                column(),
                                product(Terms.PLAIN),
                                quotient("6", "3", Terms.PLAIN)))
                .containsExactly("column.frame", "product.frame", "quotient.frame");
    }

    @Test
    void aNewModeBeginsANewSection() {
        Terms inTheHead = Terms.PLAIN.withMode(Mode.MENTAL);
        assertThat(headings(product(Terms.PLAIN), product(inTheHead)))
                .containsExactly("product.frame", "product.mental");
    }

    @Test
    void rootsOfOneDegreeAreCalledByIt() {
        assertThat(headings(root(2), root(2))).containsExactly("root2.frame");
        assertThat(headings(root(3))).containsExactly("root3.frame");
        assertThat(headings(root(2), root(3))).containsExactly("root.frame");
    }

    @Test
    void plainNumbersAndAmountsShareASectionEachWithItsRule() {
        assertThat(headings(quotient("7", "3", THREE_PLACES), quotient("7", "3", YEN)))
                .containsExactly("quotient.frame");
    }

    @Test
    void anotherRuleForPlainNumbersBeginsANewSection() {
        Terms two = Terms.PLAIN.withPlaces(2).withRounding(Rounding.HALF_UP);
        assertThat(headings(quotient("7", "3", THREE_PLACES), quotient("7", "3", two)))
                .containsExactly("quotient.frame", "quotient.frame");
    }

    @Test
    void theRuleIsToldWhereItMakesADifference() {
        assertThat(told(quotient("7", "3", THREE_PLACES)))
                .isEqualTo("Round to 3 decimal places (5 and above go up).");
        assertThat(told(quotient("7", "3", YEN)))
                .isEqualTo("Round to a whole number (5 and above go up).");
        assertThat(told(quotient("7", "3", Terms.PLAIN)))
                .isEqualTo("Write the remainder after the r.");
        assertThat(told(quotient("7", "3", Terms.PLAIN.withPlaces(1).withRounding(Rounding.DOWN))))
                .isEqualTo("Stop after 1 decimal place and write the remainder after the r.");
    }

    @Test
    void noRuleIsToldWhereItMakesNoDifference() {
        assertThat(told(quotient("6", "3", YEN))).isEmpty();
        assertThat(told(quotient("6", "3", Terms.PLAIN))).isEmpty();
        assertThat(told(product(YEN))).isEmpty();
        assertThat(told(column())).isEmpty();
    }

    @Test
    void kindsThatComeBackAfterFewProblemsAreOneSection() {
        assertThat(headings(column(), product(Terms.PLAIN), column()))
                .containsExactly("mixed.frame");
        assertThat(headings(column(), quotient("6", "3", Terms.PLAIN), root(2), root(3), column()))
                .containsExactly("mixed.frame");
    }

    @Test
    void whatIsAllInTheHeadSaysSoInItsHeading() {
        Terms inTheHead = Terms.PLAIN.withMode(Mode.MENTAL);
        Problem sum = new Column("1", List.of(BigDecimal.ONE), inTheHead);
        assertThat(headings(sum, product(inTheHead), sum)).containsExactly("mixed.mental");
        assertThat(headings(sum, product(Terms.PLAIN), sum)).containsExactly("mixed.frame");
    }

    @Test
    void aKindThatComesBackAfterARowOfFiveIsASectionAgain() {
        assertThat(headings(rows(5, 5, 5)))
                .containsExactly("column.frame", "product.frame", "column.frame");
        assertThat(headings(rows(5, 4, 5))).containsExactly("mixed.frame");
    }

    @Test
    void rulesThatAlternateInOneKindAreToldByNumbersUnderOneHeading() {
        Problem rounded = quotient("7", "3", THREE_PLACES);
        Problem left = quotient("7", "3", Terms.PLAIN);
        assertThat(headings(rounded, left, rounded, left)).containsExactly("quotient.frame");
    }

    /// Runs of so many columns, products, columns.
    private static Problem[] rows(int columns, int products, int again) {
        List<Problem> problems = new ArrayList<>();
        problems.addAll(Collections.nCopies(columns, column()));
        problems.addAll(Collections.nCopies(products, product(Terms.PLAIN)));
        problems.addAll(Collections.nCopies(again, column()));
        return problems.toArray(Problem[]::new);
    }

    private static List<String> headings(Problem... problems) {
        Sheet sheet = new Sheet("1", "Sheet", List.of(problems));
        List<String> headings = new ArrayList<>();
        for (Section section : Section.of(Numbered.of(sheet.problems()))) {
            headings.add(section.heading());
        }
        return headings;
    }

    private static String told(Problem problem) {
        return AnswerRule.told(List.of(problem), PrintWords.of(Locale.ENGLISH)).orElse("");
    }

    private static Problem column() {
        return new Column("1", List.of(BigDecimal.ONE), Terms.PLAIN);
    }

    private static Problem product(Terms terms) {
        return new Product("1", BigDecimal.TWO, BigDecimal.TEN, terms);
    }

    private static Problem quotient(String dividend, String divisor, Terms terms) {
        return new Quotient("1", new BigDecimal(dividend), new BigDecimal(divisor), terms);
    }

    private static Problem root(int degree) {
        return new Root("1", degree, BigDecimal.valueOf(64), Terms.PLAIN);
    }
}
