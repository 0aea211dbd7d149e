package tamabako.frame.quotient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.Cause;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.Step;
import tamabako.frame.TrialRule;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;
import tamabako.testkit.Draw;

/// Quotients: the handbooks' states, exact decimal arithmetic, and sums that cannot be worked.
///
/// Sources: HF = Heffelfinger and Flom, Abacus: Mystery of the Bead, F. Kato's method there; WB =
/// Using an Abacus, Wikibooks; KOJ = Kojima, Advanced Abacus (1963). States that the source does
/// not print follow from its rule.
class QuotientWorkTest {

    private static final Setup ROUNDED_TRIAL =
            Setup.COMMON.with(Habits.COMMON.with(TrialRule.ROUNDED_FIRST_DIGIT));

    @ParameterizedTest
    @CsvSource({
        "a worked lesson on the web (edurev.in), 951, 3, 30000951 30030951 30030051 30031051"
                + " 30031021 30031721 30031700, 317",
        "a worked example in a teachers' forum, 84, 28, 28000084 28004084 28004004 28003024 28003000, 3",
        "WB, 1225, 35, 3500001225 3500041225 3500040025 3500030325 3500030175 3500035175"
                + " 3500035025 3500035000, 35",
        "from memory after HF, 6308, 83, 8300006308 8300076308 8300070708 8300070498 8300076498"
                + " 8300076018 8300076000, 76",
    })
    void statesOfAHandbookExample(
            String source,
            BigDecimal dividend,
            BigDecimal divisor,
            String rests,
            BigDecimal quotient) {
        Working working = QuotientWork.work(dividend, divisor, 0, Rounding.DOWN, Setup.COMMON);

        assertThat(digits(working)).as(source).isEqualTo(rests);
        assertThat(working.outcome().answer()).isEqualTo(quotient);
        assertThat(working.outcome().remainder()).contains(BigDecimal.ZERO);
    }

    /// Source: the value is an exam example (ZSR grade 5) of a Japanese school, the states follow
    /// from the rules.
    @Test
    void statesOnThirteenRodsWithTheUnitRodInTheEighthPlace() {
        Setup setup = Setup.COMMON.withRods(13).withUnit(8);

        Working working =
                QuotientWork.work(
                        new BigDecimal(18160), new BigDecimal(908), 0, Rounding.DOWN, setup);

        assertThat(digits(working))
                .isEqualTo("9080000181600 9080002181600 9080002001600 9080002000000");
        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal(20));
    }

    @ParameterizedTest
    @CsvSource({
        "KOJ, 306, 102, 0, 3",
        "KOJ, 2575, 103, 0, 25",
        "HF, 0.00008, 0.002, 2, 0.04",
        "exam example (ZSR), 368, 8, 0, 46",
        "exam example (ZSR), 3437, 7, 0, 491",
        "exam example (ZSR), 9.5128, 0.23, 3, 41.36",
        "exam example (ZSR) to three places, 0.0453246, 0.89169, 3, 0.051",
        "exam example, 114.816, 8.32, 3, 13.8",
        "exam example, 1674, 31, 0, 54",
        "exam example, 168, 3, 0, 56",
    })
    void answersOfPublishedQuotients(
            String source,
            BigDecimal dividend,
            BigDecimal divisor,
            int places,
            BigDecimal quotient) {
        for (Setup setup : List.of(Setup.COMMON, ROUNDED_TRIAL)) {
            Working working = QuotientWork.work(dividend, divisor, places, Rounding.HALF_UP, setup);

            assertThat(working.outcome().answer()).as(source).isEqualTo(quotient);
            assertThat(working.outcome().remainder()).isEmpty();
        }
    }

    /// Source: HF, F. Kato's unit rod method: N = -4 - (-2 + 1) = -3, so 8 stands on the fourth rod
    /// right of the unit rod and the quotient, by rule I, on the second.
    @Test
    void aSmallDecimalStandsWhereKatosMethodPutsIt() {
        Working working =
                QuotientWork.work(
                        new BigDecimal("0.00008"),
                        new BigDecimal("0.002"),
                        2,
                        Rounding.DOWN,
                        Setup.COMMON);

        assertThat(working.trace().start().rod(-4).value()).isEqualTo(8);
        assertThat(working.trace().end().rod(-2).value()).isEqualTo(4);
        assertThat(working.outcome().answer()).isEqualTo(new BigDecimal("0.04"));
    }

    @Test
    void aRoundedTrialDigitThatIsTooSmallIsRevisedUp() {
        Working working =
                QuotientWork.work(
                        new BigDecimal(84), new BigDecimal(28), 0, Rounding.DOWN, ROUNDED_TRIAL);

        assertThat(digits(working)).isEqualTo("28000084 28002084 28002044 28002028 28003000");
        assertThat(causes(working)).contains(new Cause.TrialDigit(0, 2), new Cause.RevisedUp(0, 3));
    }

    /// 24 counts as 20 and 25 as 30: 7 by 2 is 3, and 7 by 3 is 2.
    @ParameterizedTest
    @CsvSource({"72, 24, 3", "75, 25, 2", "76, 95, 7", "9, 9, 1"})
    void theTrialDivisorIsRoundedByItsSecondDigit(
            BigDecimal dividend, BigDecimal divisor, int trial) {
        Working working = QuotientWork.work(dividend, divisor, 1, Rounding.DOWN, ROUNDED_TRIAL);

        assertThat(causes(working).getFirst())
                .isInstanceOfSatisfying(
                        Cause.TrialDigit.class,
                        first -> assertThat(first.digit()).isEqualTo(trial));
    }

    @Test
    void aDividendTooSmallForThePlacesIsAllRemainder() {
        for (String dividend : List.of("0", "0.0004", "2.9")) {
            Working working =
                    QuotientWork.work(
                            new BigDecimal(dividend),
                            new BigDecimal(3),
                            0,
                            Rounding.DOWN,
                            Setup.COMMON);

            assertThat(working.outcome().answer()).isEqualTo(BigDecimal.ZERO);
            assertThat(working.outcome().remainder()).contains(new BigDecimal(dividend));
            assertThat(working.trace().steps()).isEmpty();
        }
    }

    @Test
    void anyQuotientAndRemainderAreExact() {
        forSeeds(60_000, draw -> check(draw, Rounding.DOWN, draw.between(0, 3)));
    }

    @Test
    void anyQuotientIsRoundedHalfUp() {
        forSeeds(40_000, draw -> check(draw, Rounding.HALF_UP, draw.between(0, 4)));
    }

    /// A divisor that begins with nines or zeros, and a dividend near its multiple, where trial
    /// digits go most astray.
    @Test
    void quotientsBesideAMultipleOfTheDivisorAreExact() {
        forSeeds(
                20_000,
                draw -> {
                    int digits = draw.between(1, 5);
                    BigDecimal power = BigDecimal.TEN.pow(digits);
                    BigDecimal near = BigDecimal.valueOf(draw.between(-3, 3));
                    BigDecimal divisor =
                            power.multiply(BigDecimal.valueOf(draw.between(1, 10))).add(near);
                    BigDecimal dividend =
                            divisor.multiply(new BigDecimal(draw.whole(draw.between(1, 5))))
                                    .add(BigDecimal.valueOf(draw.between(-2, 2)))
                                    .abs();
                    check(draw, dividend, divisor, Rounding.DOWN, 0);
                });
    }

    private static void check(Draw draw, Rounding rounding, int places) {
        BigDecimal dividend = draw.decimal(draw.length(9), draw.between(0, 4));
        BigDecimal divisor = draw.decimal(draw.length(6), draw.between(0, 4));
        check(draw, dividend, divisor, rounding, places);
    }

    private static void check(
            Draw draw, BigDecimal dividend, BigDecimal divisor, Rounding rounding, int places) {
        Setup setup =
                Setup.COMMON
                        .with(draw.oneOf(List.of(FrameKind.values())))
                        .with(Habits.COMMON.with(draw.oneOf(List.of(TrialRule.values()))));

        Working working = QuotientWork.work(dividend, divisor, places, rounding, setup);

        RoundingMode mode = rounding == Rounding.HALF_UP ? RoundingMode.HALF_UP : RoundingMode.DOWN;
        BigDecimal quotient = dividend.divide(divisor, places, mode);
        assertThat(working.outcome().answer()).isEqualByComparingTo(quotient);
        assertThat(working.outcome().remainder().isPresent()).isEqualTo(rounding == Rounding.DOWN);
        working.outcome()
                .remainder()
                .ifPresent(left ->
                        assertThat(left)
                                .isEqualByComparingTo(
                                        dividend.subtract(quotient.multiply(divisor))));
    }

    @Test
    void trialByTheFirstDigitIsNeverRevisedUp() {
        forSeeds(
                5_000,
                draw -> {
                    BigDecimal dividend = draw.decimal(draw.length(8), 0);
                    BigDecimal divisor = draw.decimal(draw.length(5), 0);

                    Working working =
                            QuotientWork.work(dividend, divisor, 0, Rounding.DOWN, Setup.COMMON);

                    assertThat(causes(working)).noneMatch(Cause.RevisedUp.class::isInstance);
                });
    }

    @ParameterizedTest
    @CsvSource({
        "7, 0, 7 cannot be divided by 0.",
        "-7, 3, -7 is below 0.",
        "7, -0.3, -0.3 is below 0.",
        "1234567890123456789012, 1234567, 1234567890123456789012 ÷ 1234567 needs 32 rods to be worked,",
        "1E+99999999, 0, '1E+99999999 needs 100000000 rods to be worked, and the frame has 31.'",
    })
    void aNumberThatCannotBeWorkedIsNamed(BigDecimal dividend, BigDecimal divisor, String message) {
        assertThatThrownBy(
                        () -> QuotientWork.work(dividend, divisor, 0, Rounding.DOWN, Setup.COMMON))
                .isInstanceOf(Unworkable.class)
                .hasMessageStartingWith(message);
    }

    @ParameterizedTest
    @CsvSource({"-1", "13"})
    void placesOutOfRangeAreNamed(int places) {
        assertThatThrownBy(() ->
                        QuotientWork.work(
                                BigDecimal.TEN,
                                BigDecimal.TWO,
                                places,
                                Rounding.DOWN,
                                Setup.COMMON))
                .isInstanceOf(Unworkable.class)
                .hasMessage(
                        "An answer is worked to 0 to 12 decimal places, not "
                                + places
                                + ". Ask for a number of places in that range.");
    }

    @Test
    void theFrameThatAQuotientTakesByItselfIsLongEnoughWhenAskedFor() {
        forSeeds(
                3_000,
                draw -> {
                    BigDecimal dividend = draw.decimal(draw.length(7), draw.between(0, 7));
                    BigDecimal divisor = draw.decimal(draw.length(5), draw.between(0, 5));
                    Working working =
                            QuotientWork.work(dividend, divisor, 2, Rounding.DOWN, Setup.COMMON);
                    Frame start = working.trace().start();

                    Setup asked =
                            Setup.COMMON
                                    .withRods(start.rods().size())
                                    .withUnit(start.highest() + 1);

                    assertThat(QuotientWork.work(dividend, divisor, 2, Rounding.DOWN, asked))
                            .isEqualTo(working);
                });
    }

    /// Whatever frame is asked for, the quotient is exact or the sum is refused with a reason that
    /// names the frame; the hand never runs off it.
    @Test
    void onAnyFrameAQuotientIsExactOrRefused() {
        forSeeds(
                10_000,
                draw -> {
                    BigDecimal dividend = draw.decimal(draw.length(7), draw.between(-2, 5));
                    BigDecimal divisor = draw.decimal(draw.length(5), draw.between(-2, 5));
                    int places = draw.between(0, 3);
                    int rods = draw.between(6, 31);
                    Setup setup = Setup.COMMON.withRods(rods);
                    if (draw.chance(1, 2)) {
                        setup = setup.withUnit(draw.between(1, rods));
                    }
                    try {
                        Working working =
                                QuotientWork.work(dividend, divisor, places, Rounding.DOWN, setup);
                        assertThat(working.outcome().answer())
                                .isEqualByComparingTo(
                                        dividend.divide(divisor, places, RoundingMode.DOWN));
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
        assertThatThrownBy(() -> work951(Setup.COMMON.withRods(6)))
                .hasMessageStartingWith("951 ÷ 3 needs 7 rods to be worked, and the frame has 6.");
        assertThatThrownBy(() -> work951(Setup.COMMON.withRods(9).withUnit(4)))
                .hasMessageStartingWith(
                        "Rod 4 from the left cannot be the unit rod on a frame of 9 rods");
        assertThatThrownBy(() -> work951(Setup.COMMON.withRods(9).withUnit(8)))
                .hasMessageStartingWith(
                        "Rod 8 from the left cannot be the unit rod on a frame of 9 rods");
        assertThat(work951(Setup.COMMON.withRods(7)).outcome().answer())
                .isEqualTo(new BigDecimal(317));
    }

    private static Working work951(Setup setup) {
        return QuotientWork.work(new BigDecimal(951), new BigDecimal(3), 0, Rounding.DOWN, setup);
    }

    private static List<Cause> causes(Working working) {
        return working.trace().steps().stream().map(Step::cause).toList();
    }

    private static String digits(Working working) {
        return String.join(" ", working.trace().rests().stream().map(Frame::digits).toList());
    }
}
