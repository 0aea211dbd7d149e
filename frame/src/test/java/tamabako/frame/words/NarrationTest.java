package tamabako.frame.words;

import static org.junit.jupiter.api.Assertions.assertAll;
import static tamabako.testkit.Golden.assertGolden;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.frame.CarryOrder;
import tamabako.frame.Frame;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.SquareRootWay;
import tamabako.frame.Trace;
import tamabako.frame.TrialRule;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;
import tamabako.frame.product.ProductWork;
import tamabako.frame.quotient.QuotientWork;
import tamabako.frame.root.RootWork;

/// Whole workings as they are told, state for state. The states are those of the handbooks, tested
/// with the procedures; the sentences are read and kept.
class NarrationTest {

    @Test
    void aColumnWithTenComplements() {
        assertTold("column-34+78", column("34 78", Setup.COMMON), CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aColumnThatBorrows() {
        assertTold(
                "column-1000-997", column("1000 -997", Setup.COMMON), CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aColumnBelowZero() {
        assertTold(
                "column-0-95+118", column("0 -95 118", Setup.COMMON), CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aColumnThatEndsBelowZero() {
        assertTold(
                "column-50-75-3125",
                column("50 -75 -3125", Setup.COMMON),
                CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aColumnThatPassesOverEmptyAndFullRods() {
        assertTold(
                "column-9731+269-7",
                column("9731 269 -7", Setup.COMMON),
                CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aColumnWithCarriesFirst() {
        Setup carryFirst = Setup.COMMON.with(Habits.COMMON.with(CarryOrder.CARRY_THEN_REMOVE));
        assertTold(
                "column-9731+269+456-3+67.5-carry-first",
                column("9731 269 456 -3 67.5", carryFirst),
                CarryOrder.CARRY_THEN_REMOVE);
    }

    @Test
    void aProduct() {
        Working working =
                ProductWork.work(new BigDecimal("426"), new BigDecimal("0.35"), Setup.COMMON);
        assertTold("product-426x0.35", working, CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aQuotientRevised() {
        assertTold(
                "quotient-1225-35",
                quotient("1225", "35", Setup.COMMON),
                CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aQuotientRevisedUpward() {
        Setup rounded = Setup.COMMON.with(Habits.COMMON.with(TrialRule.ROUNDED_FIRST_DIGIT));
        assertTold(
                "quotient-18354-69-rounded",
                quotient("18354", "69", rounded),
                CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aSquareRoot() {
        assertTold("root-729", root(2, "729", Setup.COMMON), CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aSquareRootByTheDoubleRoot() {
        Setup doubled = Setup.COMMON.with(Habits.COMMON.with(SquareRootWay.DOUBLE_ROOT));
        assertTold("root-729-double", root(2, "729", doubled), CarryOrder.REMOVE_THEN_CARRY);
    }

    @Test
    void aCubeRoot() {
        assertTold("cube-root-59319", root(3, "59319", Setup.COMMON), CarryOrder.REMOVE_THEN_CARRY);
    }

    private static Working quotient(String dividend, String divisor, Setup setup) {
        return QuotientWork.work(
                new BigDecimal(dividend), new BigDecimal(divisor), 0, Rounding.DOWN, setup);
    }

    private static Working root(int degree, String of, Setup setup) {
        return RootWork.work(degree, new BigDecimal(of), 0, Rounding.DOWN, setup);
    }

    private static Working column(String rows, Setup setup) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (String row : rows.split(" ", -1)) {
            numbers.add(new BigDecimal(row));
        }
        return ColumnWork.work(numbers, setup);
    }

    private static void assertTold(String name, Working working, CarryOrder order) {
        assertAll(
                Languages.all().stream()
                        .map(language ->
                                () ->
                                        assertGolden(
                                                "told/%s.%s.txt"
                                                        .formatted(name, language.getLanguage()),
                                                told(working, language, order))));
    }

    private static String told(Working working, Locale language, CarryOrder order) {
        StepWords words = StepWords.of(language);
        return told(words, working.setting(), order)
                + told(words, working.trace(), order)
                + words.answer(working.outcome())
                + "\n";
    }

    private static String told(StepWords words, Trace trace, CarryOrder order) {
        StringBuilder told = new StringBuilder(trace.start().digits()).append('\n');
        List<String> said = words.say(trace);
        List<Frame> states = trace.states();
        for (int i = 0; i < said.size(); i++) {
            String formula = words.brief(trace.steps().get(i), order);
            String state = states.get(i + 1).digits();
            told.append("%s  %-16s ".formatted(state, formula)).append(said.get(i)).append('\n');
        }
        return told.toString();
    }
}
