package tamabako.frame.product;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.CarryOrder;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;

/// Products: the handbooks' states, exact decimal arithmetic, and sums that cannot be worked.
///
/// Sources: HF = Heffelfinger and Flom, Abacus: Mystery of the Bead; WB = Using an Abacus,
/// Wikibooks. States that the source does not print follow from its rule.
class ProductWorkTest {

    @ParameterizedTest
    @CsvSource({
        "HF, 306, 4, 400306000 400306240 400300240 400312240 400012240, 1224",
        "HF, 426, 0.35, 3500426000 3500426180 3500426210 3500420210 3500420810 3500420910"
                + " 3500400910 3500412910 3500414910 3500014910, 149.1",
        "WB, 47, 23, 230470000 230471400 230471610 230401610 230409610 230410810 230010810, 1081",
    })
    void statesOfAHandbookExample(
            String source,
            BigDecimal multiplicand,
            BigDecimal multiplier,
            String rests,
            String read) {
        Working working = ProductWork.work(multiplicand, multiplier, Setup.COMMON);

        assertThat(digits(working)).as(source).isEqualTo(rests);
        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal(read));
        assertThat(working.outcome().remainder()).isEmpty();
    }

    /// Source: exam examples of a Japanese school (ZSR grades), and 2.43 × 0.1354 of another, by
    /// arithmetic.
    @ParameterizedTest
    @CsvSource({
        "24, 3, 72",
        "144, 2, 288",
        "50, 79, 3950",
        "568, 32, 18176",
        "3598, 56, 201488",
        "2863, 568, 1626184",
        "168, 0.0225, 3.78",
        "435917, 0.748, 326065.916",
        "2.43, 0.1354, 0.329022",
        "72, 3, 216",
    })
    void answersOfExamProducts(BigDecimal multiplicand, BigDecimal multiplier, BigDecimal product) {
        assertThat(ProductWork.work(multiplicand, multiplier, Setup.COMMON).outcome().answer())
                .isEqualTo(product);
    }

    /// Source: HF, decimals: whole digits 0.253 = 0, 0.0203 = -1, 0.0092 = -2, 0.00057 = -3; so the
    /// first digits stand on the rods 4, 3, 2 and 1 beside a multiplier of four whole digits.
    @ParameterizedTest
    @CsvSource({"0.253, 4", "0.0203, 3", "0.0092, 2", "0.00057, 1"})
    void aDecimalStandsAsFarFromTheUnitRodAsItHasWholeDigits(BigDecimal multiplicand, int rod) {
        Frame set =
                ProductWork.work(multiplicand, new BigDecimal(1000), Setup.COMMON).trace().start();

        assertThat(set.value(rod + 1, set.highest() - 1)).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(set.rod(rod).value()).isPositive();
    }

    @Test
    void aZeroFactorGivesZero() {
        for (List<String> factors :
                List.of(
                        List.of("0", "0"),
                        List.of("306", "0"),
                        List.of("0.00", "0.0045"),
                        List.of("0E+80", "7"))) {
            Working working =
                    ProductWork.work(
                            new BigDecimal(factors.get(0)),
                            new BigDecimal(factors.get(1)),
                            Setup.COMMON);

            assertThat(working.outcome().answer()).isEqualTo(BigDecimal.ZERO);
        }
    }

    @Test
    void anyProductIsExact() {
        forSeeds(
                60_000,
                draw -> {
                    BigDecimal multiplicand = draw.decimal(draw.length(7), draw.between(0, 6));
                    BigDecimal multiplier = draw.decimal(draw.length(6), draw.between(0, 5));
                    Setup setup =
                            Setup.COMMON
                                    .with(draw.oneOf(List.of(FrameKind.values())))
                                    .with(
                                            Habits.COMMON.with(
                                                    draw.oneOf(List.of(CarryOrder.values()))));

                    Working working = ProductWork.work(multiplicand, multiplier, setup);

                    assertThat(working.outcome().answer())
                            .isEqualByComparingTo(multiplicand.multiply(multiplier));
                });
    }

    @Test
    void aRoundedProductIsTheExactOneRounded() {
        forSeeds(
                20_000,
                draw -> {
                    BigDecimal multiplicand = draw.decimal(draw.length(5), draw.between(0, 5));
                    BigDecimal multiplier = draw.decimal(draw.length(5), draw.between(0, 5));
                    int places = draw.between(0, 5);
                    Rounding rounding = draw.oneOf(List.of(Rounding.values()));

                    Working working =
                            ProductWork.work(
                                    multiplicand, multiplier, places, rounding, Setup.COMMON);

                    RoundingMode mode =
                            rounding == Rounding.HALF_UP ? RoundingMode.HALF_UP : RoundingMode.DOWN;
                    assertThat(working.outcome().answer())
                            .isEqualByComparingTo(
                                    multiplicand.multiply(multiplier).setScale(places, mode));
                });
    }

    @Test
    void aFrameOfAnyLengthThatIsEnoughGivesTheSameSteps() {
        Working usual = ProductWork.work(new BigDecimal(306), new BigDecimal(4), Setup.COMMON);
        for (int rods = 7; rods <= 31; rods++) {
            Setup setup = Setup.COMMON.withRods(rods);

            Working working = ProductWork.work(new BigDecimal(306), new BigDecimal(4), setup);

            assertThat(working.trace().start().rods()).hasSize(rods);
            assertThat(working.trace().steps()).isEqualTo(usual.trace().steps());
        }
    }

    @Test
    void theUnitRodIsWhereItIsAskedFor() {
        Setup setup = Setup.COMMON.withRods(13).withUnit(10);

        Working working = ProductWork.work(new BigDecimal(306), new BigDecimal(4), setup);

        assertThat(working.trace().start().digits()).isEqualTo("4000030600000");
        assertThat(working.trace().end().digits()).isEqualTo("4000001224000");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-306 | 4 | -306 is below 0.",
                "306 | -0.4 | -0.4 is below 0.",
                "12345678901 | 98765432109 | 12345678901 × 98765432109 needs 35 rods to be worked, and the frame has 31.",
                "1E+2000000000 | 2 | 1E+2000000000 needs 2000000001 rods to be worked, and the frame has 31.",
                "1E-2000000000 | 2 | 1E-2000000000 needs 2000000000 rods to be worked, and the frame has 31.",
            })
    void aFactorThatCannotBeWorkedIsNamed(
            BigDecimal multiplicand, BigDecimal multiplier, String message) {
        assertThatThrownBy(() -> ProductWork.work(multiplicand, multiplier, Setup.COMMON))
                .isInstanceOf(Unworkable.class)
                .hasMessageStartingWith(message);
    }

    @ParameterizedTest
    @CsvSource({"-1", "13"})
    void placesOutOfRangeAreNamed(int places) {
        assertThatThrownBy(() ->
                        ProductWork.work(
                                BigDecimal.TWO,
                                BigDecimal.TWO,
                                places,
                                Rounding.HALF_UP,
                                Setup.COMMON))
                .isInstanceOf(Unworkable.class)
                .hasMessage(
                        "An answer is worked to 0 to 12 decimal places, not "
                                + places
                                + ". Ask for a number of places in that range.");
    }

    /// Whatever frame is asked for, the product is exact or the sum is refused with a reason that
    /// names the frame; the hand never runs off it.
    @Test
    void onAnyFrameAProductIsExactOrRefused() {
        forSeeds(
                10_000,
                draw -> {
                    BigDecimal multiplicand = draw.decimal(draw.length(6), draw.between(-2, 6));
                    BigDecimal multiplier = draw.decimal(draw.length(5), draw.between(-2, 5));
                    int rods = draw.between(6, 31);
                    Setup setup = Setup.COMMON.withRods(rods);
                    if (draw.chance(1, 2)) {
                        setup = setup.withUnit(draw.between(1, rods));
                    }
                    try {
                        Working working = ProductWork.work(multiplicand, multiplier, setup);
                        assertThat(working.outcome().answer())
                                .isEqualByComparingTo(multiplicand.multiply(multiplier));
                        assertThat(working.trace().end().rods()).hasSize(rods);
                    } catch (Unworkable refused) {
                        assertThat(refused.reason())
                                .isInstanceOfAny(
                                        Unworkable.Reason.TooLong.class,
                                        Unworkable.Reason.NoSuchUnitRod.class);
                    }
                });
    }

    @Test
    void aFrameTooShortOrAUnitRodWithoutRoomIsNamed() {
        BigDecimal multiplicand = new BigDecimal("306");
        BigDecimal multiplier = new BigDecimal("4");

        assertThatThrownBy(
                        () -> ProductWork.work(multiplicand, multiplier, Setup.COMMON.withRods(6)))
                .hasMessageStartingWith("306 × 4 needs 7 rods to be worked, and the frame has 6.");
        assertThatThrownBy(() ->
                        ProductWork.work(
                                multiplicand, multiplier, Setup.COMMON.withRods(13).withUnit(6)))
                .hasMessageStartingWith(
                        "Rod 6 from the left cannot be the unit rod on a frame of 13 rods");
        assertThatThrownBy(() ->
                        ProductWork.work(
                                multiplicand,
                                new BigDecimal("0.35"),
                                Setup.COMMON.withRods(13).withUnit(12)))
                .hasMessageStartingWith(
                        "Rod 12 from the left cannot be the unit rod on a frame of 13 rods");
    }

    private static String digits(Working working) {
        return String.join(" ", working.trace().rests().stream().map(Frame::digits).toList());
    }
}
