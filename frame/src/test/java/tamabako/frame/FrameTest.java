package tamabako.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A frame at rest, and the setup that asks for one.
class FrameTest {

    @Test
    void itReadsEachRodByItsPowerOfTen() {
        Frame frame =
                Frame.clear(FrameKind.MODERN, -2, 2)
                        .with(2, Rod.showing(1))
                        .with(0, Rod.showing(4))
                        .with(-1, Rod.showing(9))
                        .with(-2, Rod.showing(6));

        assertThat(frame.digits()).isEqualTo("10496");
        assertThat(frame.value()).isEqualByComparingTo("104.96");
        assertThat(frame.value(-1, 0)).isEqualByComparingTo("4.9");
        assertThat(frame.value(-9, -2)).isEqualByComparingTo("0.06");
        assertThat(frame.value(3, 9)).isEqualTo(BigDecimal.ZERO);
        assertThat(frame.highest()).isEqualTo(2);
    }

    @Test
    void countsAboveNineAreWrittenAsOneCharacter() {
        Frame frame =
                new Frame(
                        FrameKind.SUANPAN,
                        0,
                        List.of(new Rod(2, 5), new Rod(2, 0), new Rod(0, 5), new Rod(1, 4)));

        assertThat(frame.digits()).isEqualTo("95AF");
        assertThat(frame.value()).isEqualByComparingTo("9615");
    }

    @ParameterizedTest
    @CsvSource({"0", "32", "-1"})
    void noSetupAsksForAFrameThatCannotBe(int rods) {
        assertReason(
                () -> Setup.COMMON.withRods(rods), new Unworkable.Reason.NoSuchFrame(rods, 31));
    }

    @ParameterizedTest
    @CsvSource({"0", "14"})
    void noSetupAsksForAUnitRodBesideTheFrame(int unit) {
        assertReason(
                () -> Setup.COMMON.withRods(13).withUnit(unit),
                new Unworkable.Reason.NoSuchUnitRod(unit, 13));
    }

    @Test
    void aSetupIsChangedOneWishAtATime() {
        Habits habits =
                Habits.COMMON
                        .with(CarryOrder.CARRY_THEN_REMOVE)
                        .with(Fingering.THREE_FINGERS)
                        .with(TrialRule.ROUNDED_FIRST_DIGIT)
                        .with(SquareRootWay.DOUBLE_ROOT);

        assertThat(Setup.COMMON.withRods(13).withUnit(10).with(FrameKind.OLDER).with(habits))
                .isEqualTo(
                        new Setup(
                                FrameKind.OLDER,
                                OptionalInt.of(13),
                                OptionalInt.of(10),
                                new Habits(
                                        CarryOrder.CARRY_THEN_REMOVE,
                                        Fingering.THREE_FINGERS,
                                        TrialRule.ROUNDED_FIRST_DIGIT,
                                        SquareRootWay.DOUBLE_ROOT)));
    }

    private static void assertReason(Runnable made, Unworkable.Reason reason) {
        assertThatThrownBy(made::run)
                .isInstanceOfSatisfying(
                        Unworkable.class, thrown -> assertThat(thrown.reason()).isEqualTo(reason));
    }
}
