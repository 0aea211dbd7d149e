package tamabako.frame.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.frame.CarryOrder;
import tamabako.frame.Figures;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Setup;
import tamabako.frame.Trace;
import tamabako.frame.Working;
import tamabako.frame.column.ColumnWork;

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
    void everyStepOfAnyColumnIsSaid() {
        forSeeds(
                2_000,
                draw -> {
                    Setup setup =
                            Setup.COMMON
                                    .with(draw.oneOf(List.of(FrameKind.values())))
                                    .with(
                                            Habits.COMMON.with(
                                                    draw.oneOf(List.of(CarryOrder.values()))));
                    List<BigDecimal> rows = new ArrayList<>();
                    for (int i = draw.between(1, 6); i > 0; i--) {
                        BigDecimal row = draw.decimal(draw.length(9), draw.between(0, 2));
                        rows.add(draw.chance(1, 2) ? row.negate() : row);
                    }
                    Trace trace = ColumnWork.work(rows, setup).trace();
                    for (Locale language : Languages.all()) {
                        assertThat(StepWords.of(language).say(trace))
                                .hasSameSizeAs(trace.steps())
                                .noneMatch(said -> said.isBlank() || said.contains("{"));
                    }
                });
    }

    private static Working column(String rows, Setup setup) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (String row : rows.split(" ", -1)) {
            numbers.add(Figures.parse(row));
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
