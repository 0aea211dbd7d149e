package tamabako.frame.words;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.frame.CarryOrder;
import tamabako.frame.FrameKind;
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

/// Whatever is worked can be told: one sentence a step, nothing left unfilled.
class NarrationPropertyTest {

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
                    assertAllSaid(ColumnWork.work(rows, setup));
                });
    }

    @Test
    void everyStepOfAnyOtherWorkIsSaid() {
        forSeeds(
                500,
                draw -> {
                    Habits habits =
                            Habits.COMMON
                                    .with(draw.oneOf(List.of(CarryOrder.values())))
                                    .with(draw.oneOf(List.of(TrialRule.values())))
                                    .with(draw.oneOf(List.of(SquareRootWay.values())));
                    Setup setup = Setup.COMMON.with(habits);
                    BigDecimal first = draw.decimal(draw.length(6), draw.between(0, 2));
                    BigDecimal second = draw.decimal(draw.length(4), draw.between(0, 2));

                    assertAllSaid(ProductWork.work(first, second, setup));
                    assertAllSaid(QuotientWork.work(first, second, 1, Rounding.HALF_UP, setup));
                    assertAllSaid(RootWork.work(2, first, 1, Rounding.DOWN, setup));
                    assertAllSaid(RootWork.work(3, first, 0, Rounding.DOWN, setup));
                });
    }

    private static void assertAllSaid(Working working) {
        for (Trace trace : List.of(working.setting(), working.trace())) {
            for (Locale language : Languages.all()) {
                assertThat(StepWords.of(language).say(trace))
                        .hasSameSizeAs(trace.steps())
                        .noneMatch(said -> said.isBlank() || said.contains("{"));
            }
        }
    }
}
