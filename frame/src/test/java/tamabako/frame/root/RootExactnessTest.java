package tamabako.frame.root;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Habits;
import tamabako.frame.Rounding;
import tamabako.frame.Setup;
import tamabako.frame.SquareRootWay;
import tamabako.frame.TrialRule;
import tamabako.frame.Unworkable;
import tamabako.frame.Working;
import tamabako.testkit.Draw;

/// Every root on the frame is the exact root, by whole-number arithmetic.
class RootExactnessTest {

    @Test
    void everySquareRootOfUpToFourDigitsIsExact() {
        for (SquareRootWay way : SquareRootWay.values()) {
            for (int of = 1; of <= 9999; of++) {
                check(2, BigDecimal.valueOf(of), 0, Rounding.DOWN, with(way));
            }
        }
    }

    @Test
    void everyCubeRootUpToTwentyOfAWholeNumberIsExact() {
        for (int of = 1; of <= 9261; of++) {
            check(3, BigDecimal.valueOf(of), 0, Rounding.DOWN, Setup.COMMON);
        }
    }

    /// The cube roots of all two-digit and three-digit cubes and of their neighbours.
    @Test
    void cubesAndTheirNeighboursAreToldApart() {
        for (int root = 10; root <= 999; root++) {
            for (int beside = -1; beside <= 1; beside++) {
                BigDecimal of = BigDecimal.valueOf(root).pow(3).add(BigDecimal.valueOf(beside));
                check(3, of, 0, Rounding.DOWN, Setup.COMMON);
            }
        }
    }

    @Test
    void anySquareRootIsExact() {
        forSeeds(
                40_000,
                draw ->
                        check(
                                2,
                                draw.decimal(draw.length(8), draw.between(0, 5)),
                                draw.between(0, 4),
                                draw.oneOf(List.of(Rounding.values())),
                                with(draw)));
    }

    @Test
    void anyCubeRootIsExact() {
        forSeeds(
                30_000,
                draw ->
                        check(
                                3,
                                draw.decimal(draw.length(9), draw.between(0, 6)),
                                draw.between(0, 2),
                                draw.oneOf(List.of(Rounding.values())),
                                with(draw)));
    }

    /// Powers of numbers with nines and zeros, and their neighbours, where trial digits go most
    /// astray and quotients grow longest.
    @Test
    void rootsBesideAPowerAreExact() {
        forSeeds(
                15_000,
                draw -> {
                    int degree = draw.between(2, 3);
                    StringBuilder root = new StringBuilder();
                    int digits = draw.between(1, 5);
                    for (int i = 0; i < digits; i++) {
                        root.append(draw.oneOf(List.of("9", "0", "9", "1", "3", "4")));
                    }
                    BigDecimal power = new BigDecimal("1" + root).pow(degree);
                    if (draw.chance(1, 2)) {
                        power = new BigDecimal(root.toString()).pow(degree);
                    }
                    BigDecimal of = power.add(BigDecimal.valueOf(draw.between(-2, 2))).abs();
                    check(degree, of, 0, Rounding.DOWN, with(draw));
                });
    }

    @Test
    void theFrameThatARootTakesByItselfIsLongEnoughWhenAskedFor() {
        forSeeds(
                5_000,
                draw -> {
                    BigDecimal of = draw.decimal(draw.length(8), draw.between(0, 5));
                    int degree = draw.between(2, 3);
                    Setup usual = with(draw);
                    Working working = RootWork.work(degree, of, 1, Rounding.HALF_UP, usual);
                    Frame start = working.trace().start();

                    Setup asked = usual.withRods(start.rods().size()).withUnit(start.highest() + 1);

                    assertThat(RootWork.work(degree, of, 1, Rounding.HALF_UP, asked))
                            .isEqualTo(working);
                });
    }

    /// Whatever frame is asked for, the root is exact or the sum is refused with a reason that
    /// names the frame; the hand never runs off it.
    @Test
    void onAnyFrameARootIsExactOrRefused() {
        forSeeds(
                15_000,
                draw -> {
                    int rods = draw.between(4, 31);
                    Setup setup = with(draw).withRods(rods);
                    if (draw.chance(1, 2)) {
                        setup = setup.withUnit(draw.between(1, rods));
                    }
                    BigDecimal of = draw.decimal(draw.length(7), draw.between(-2, 6));
                    int places = draw.between(0, 4);
                    try {
                        check(draw.between(2, 3), of, places, Rounding.DOWN, setup);
                    } catch (Unworkable refused) {
                        assertThat(refused.reason())
                                .isInstanceOfAny(
                                        Unworkable.Reason.TooLong.class,
                                        Unworkable.Reason.NoSuchUnitRod.class);
                    }
                });
    }

    private static Setup with(Draw draw) {
        Habits habits =
                Habits.COMMON
                        .with(draw.oneOf(List.of(SquareRootWay.values())))
                        .with(draw.oneOf(List.of(TrialRule.values())));
        return Setup.COMMON.with(draw.oneOf(List.of(FrameKind.values()))).with(habits);
    }

    private static Setup with(SquareRootWay way) {
        return Setup.COMMON.with(Habits.COMMON.with(way));
    }

    private static void check(
            int degree, BigDecimal of, int places, Rounding rounding, Setup setup) {
        Working working = RootWork.work(degree, of, places, rounding, setup);

        BigDecimal answer = working.outcome().answer();
        switch (rounding) {
            case DOWN -> {
                assertThat(answer)
                        .as("%d %s", degree, of)
                        .isEqualByComparingTo(down(degree, of, places));
                assertThat(working.outcome().remainder().orElseThrow())
                        .as("%d %s", degree, of)
                        .isEqualByComparingTo(of.subtract(answer.pow(degree)));
            }
            case HALF_UP ->
                    assertThat(answer)
                            .as("%d %s", degree, of)
                            .isEqualByComparingTo(
                                    down(degree, of, places + 1)
                                            .setScale(places, RoundingMode.HALF_UP));
        }
    }

    /// The largest number of so many places whose power is not above `of`, by halving an interval.
    private static BigDecimal down(int degree, BigDecimal of, int places) {
        BigInteger whole =
                of.scaleByPowerOfTen(degree * places).setScale(0, RoundingMode.DOWN).toBigInteger();
        BigInteger low = BigInteger.ZERO;
        BigInteger high = BigInteger.ONE.shiftLeft(whole.bitLength() / degree + 1);
        while (high.subtract(low).compareTo(BigInteger.ONE) > 0) {
            BigInteger middle = low.add(high).shiftRight(1);
            if (middle.pow(degree).compareTo(whole) <= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new BigDecimal(low, places);
    }
}
