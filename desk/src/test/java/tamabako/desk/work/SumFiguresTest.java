package tamabako.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.Cause;
import tamabako.frame.Step;
import tamabako.frame.Working;
import tamabako.problems.Problem;
import tamabako.problems.text.ProblemText;

class SumFiguresTest {

    @ParameterizedTest
    @CsvSource({
        "1234.5 - 67 + 0.08, '1,234.5 | −67 | +0.08'",
        "306 x 0.4, '306 | ×0.4'",
        "1225 / 35, '1,225 | ÷35'",
        "√729, √729",
        "∛59319, '∛59,319'",
    })
    void aSumIsWrittenAsOnPaper(String sum, String written) {
        assertThat(
                        new SumFigures(ProblemText.parse(sum))
                                .lines().stream()
                                        .map(line -> line.sign() + text(line))
                                        .collect(Collectors.joining(" | ")))
                .isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource({
        "1234.5 - 67 + 0.08",
        "306 x 0.4",
        "0.253 x 42",
        "1225 / 35",
        "9.5128 / 0.23",
        "√729",
        "∛59319",
        "0 - 95 + 118"
    })
    void everyPartThatAStepPointsAtIsThere(String sum) {
        Problem problem = ProblemText.parse(sum);
        SumFigures figures = new SumFigures(problem);
        List<String> there =
                figures.lines().stream()
                        .flatMap(line ->
                                java.util.stream.Stream.concat(
                                        java.util.stream.Stream.of(line.part()),
                                        line.figures().stream().map(SumFigures.Figure::part)))
                        .toList();
        Working working = WorkWay.COMMON.work(problem).working();
        for (Step step : working.trace().steps()) {
            assertThat(there).as(step.toString()).containsAll(figures.parts(step.cause()));
        }
        for (Step step : working.setting().steps()) {
            assertThat(there).as(step.toString()).containsAll(figures.parts(step.cause()));
        }
    }

    @Test
    void aPartialProductPointsAtItsTwoDigits() {
        SumFigures figures = new SumFigures(ProblemText.parse("306 x 42"));

        assertThat(figures.parts(new Cause.PartialProduct(2, 3, 0, 2)))
                .containsExactly("multiplicand.2", "multiplier.0");
        assertThat(figures.parts(new Cause.Carry(new Cause.PartialProduct(0, 6, 1, 4))))
                .containsExactly("multiplicand.0", "multiplier.1");
    }

    @Test
    void aProductTakenPointsAtTheDigitOfTheDivisor() {
        assertThat(
                        new SumFigures(ProblemText.parse("9.5128 / 0.23"))
                                .parts(new Cause.ProductTaken(1, 4, 2, 3)))
                .containsExactly("divisor.-2");
    }

    private static String text(SumFigures.Line line) {
        return line.figures().stream().map(SumFigures.Figure::text).collect(Collectors.joining());
    }
}
