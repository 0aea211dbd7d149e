package tamabako.desk.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeadwayTest {

    private static final LocalDate MAY = LocalDate.of(2026, 5, 1);

    private static Gathered.Day day(int later, int answers, int right) {
        return new Gathered.Day(MAY.plusDays(later), answers, right);
    }

    /// 60 of 100 and 80 of 100: z = .2 / sqrt(.7 x .3 x .02) = 3.086, the test of two proportions
    /// of any handbook of statistics.
    @Test
    void twoHalvesAreComparedByTheTestOfTwoProportions() {
        Headway headway = Headway.of(List.of(day(0, 100, 60), day(7, 100, 80))).orElseThrow();
        assertThat(headway.errors()).isCloseTo(3.086, within(0.001));
        assertThat(headway.better()).isTrue();
        assertThat(headway.still()).isFalse();
    }

    @Test
    void aSmallRiseIsNotPraisedAndNotCalledStandingStill() {
        Headway headway = Headway.of(List.of(day(0, 50, 40), day(7, 50, 41))).orElseThrow();
        assertThat(headway.better()).isFalse();
        assertThat(headway.still()).isFalse();
    }

    @Test
    void fewerThanFortyAnswersInAHalfSayNothing() {
        assertThat(Headway.of(List.of(day(0, 39, 10), day(7, 39, 39)))).isEmpty();
        assertThat(Headway.of(List.of())).isEmpty();
    }

    @Test
    void whoIsAlwaysRightStandsStillAndThatIsNoFault() {
        Headway headway = Headway.of(List.of(day(0, 50, 50), day(7, 50, 50))).orElseThrow();
        assertThat(headway.errors()).isZero();
        assertThat(headway.better()).isFalse();
    }
}
