package tamabako.desk.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ThrottleTest {

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final ChangingClock clock = new ChangingClock();
    private final Throttle throttle = new Throttle(clock, List.of(new Throttle.Rate(5, MINUTE)));

    private int heard(Throttle by, String key, int tries) {
        int heard = 0;
        for (int i = 0; i < tries; i++) {
            heard += by.count(key).isEmpty() ? 1 : 0;
        }
        return heard;
    }

    @Test
    void fiveTriesAMinuteAreHeardAndTheSixthIsToldHowLongToWait() {
        for (int i = 0; i < 5; i++) {
            assertThat(throttle.count("a")).isEmpty();
            clock.goOn(Duration.ofSeconds(2));
        }
        assertThat(throttle.count("a")).contains(Duration.ofSeconds(50));
        clock.goOn(Duration.ofSeconds(49));
        assertThat(throttle.count("a")).contains(Duration.ofSeconds(1));
        clock.goOn(Duration.ofSeconds(1));
        assertThat(throttle.count("a")).isEmpty();
        assertThat(throttle.count("a")).contains(Duration.ofSeconds(2));
    }

    @Test
    void noMoreThanFiveAreHeardInAnyMinuteHoweverTheyAreSpread() {
        int heard = 0;
        for (int second = 0; second < 600; second++) {
            heard += heard(throttle, "a", 3);
            clock.goOn(Duration.ofSeconds(1));
        }
        assertThat(heard).isEqualTo(50);
    }

    @Test
    void refusedTriesDoNotMakeTheWaitLonger() {
        heard(throttle, "a", 5);
        heard(throttle, "a", 1_000);
        clock.goOn(MINUTE);
        assertThat(throttle.count("a")).isEmpty();
    }

    @Test
    void eachKeyCountsByItself() {
        heard(throttle, "a", 6);
        assertThat(throttle.count("b")).isEmpty();
        assertThat(throttle.count("a")).isPresent();
    }

    @Test
    void aRightTryIsTakenBackAndTheWrongOnesBeforeItStay() {
        heard(throttle, "a", 4);
        assertThat(throttle.count("a")).isEmpty();
        throttle.forgive("a");
        assertThat(heard(throttle, "a", 3)).isEqualTo(1);
        throttle.forgive("never seen");
    }

    @Test
    void aHundredADayAreHeardAndTheDayCountsOnAfterTheMinute() {
        Throttle byAccount = new Throttle(clock, List.of(SigningIn.A_MINUTE, SigningIn.A_DAY));
        int heard = 0;
        for (int minute = 0; minute < 24 * 60; minute++) {
            heard += heard(byAccount, "a", 6);
            clock.goOn(MINUTE);
        }
        assertThat(heard).isEqualTo(100);
        assertThat(byAccount.count("a")).isEmpty();
    }

    @Test
    void aFloodOfKeysTakesNoMemoryForEver() {
        heard(throttle, "old", 5);
        for (int i = 0; i < 10_000; i++) {
            throttle.count("flood " + i);
        }
        assertThat(throttle.count("old")).isEqualTo(Optional.empty());
        assertThat(throttle.count("flood 9999")).isEmpty();
    }
}
