package tamabako.voice.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.voice.number.Wording;
import tamabako.voice.script.CallScript;

class SoundingTest {

    private static final double TEN_MILLISECONDS = 0.010;

    /// Twenty rows at the pace of beginners (a one-digit row in 1.5 s), of grade 3 (3 and 4 digits
    /// in 3.5 s) and of experts (16 digits in 4 s); paces: common practice, no published source.
    @ParameterizedTest
    @CsvSource({
        "en, FULL, 1, 1, 1.5",
        "en, FULL, 3, 4, 3.5",
        "en, GROUPS, 16, 16, 4.0",
        "en, FULL, 16, 16, 4.0",
        "ja, FULL, 1, 1, 1.5",
        "ja, FULL, 3, 4, 3.5",
        "ja, FULL, 16, 16, 4.0"
    })
    void everyRowIsHeardOnItsSlotAndAsLoudAsTheOthers(
            String language, Wording wording, int least, int most, double seconds) {
        boolean minus = most < 16;
        CallScript script =
                Calls.script(language, wording, Calls.rows(most, 20, least, most, minus));

        CallSound sound = Calls.sound(script, new Pace.SecondsARow(seconds));

        Heard heard = new Heard(Wave.of(sound.samples()));
        assertThat(sound.rows()).hasSize(20);
        for (int row = 0; row < 20; row++) {
            double slot = sound.rows().getFirst() + row * seconds;
            assertThat(sound.rows().get(row)).isCloseTo(slot, within(1e-9));
            double level = heard.level(slot, sound.ends().get(row));
            double onset = heard.onset(slot - 0.08, slot + seconds / 2, level);
            assertThat(onset).as("row %d", row + 1).isCloseTo(slot, within(TEN_MILLISECONDS));
            assertThat(level).as("row %d", row + 1).isBetween(-23.0, -19.0);
            assertThat(sound.ends().get(row)).isLessThan(slot + seconds);
        }
        assertThat(heard.peak()).isLessThanOrEqualTo(0.8901);
    }

    @ParameterizedTest
    @CsvSource({"en, FULL", "en, GROUPS", "ja, FULL"})
    void everyRowEndsInSilence(String language, Wording wording) {
        CallScript script = Calls.script(language, wording, Calls.rows(3, 20, 5, 16, true));

        CallSound sound = Calls.sound(script, new Pace.Unhurried(0.5));

        for (int row = 0; row < 20; row++) {
            int end = (int) Math.round(sound.ends().get(row) * 16_000);
            assertThat(Math.abs(sound.samples()[end - 1])).isLessThan(0.001f);
            assertThat(sound.samples()[end]).isZero();
        }
    }

    @Test
    void aSecondOfFourDigitsGivesSixteenFourSeconds() {
        CallScript script =
                Calls.script(
                        "ja",
                        Wording.FULL,
                        List.of(
                                new BigDecimal("1234567890123456"),
                                new BigDecimal("1234567890123456"),
                                new BigDecimal("12345678")));

        CallSound sound = Calls.sound(script, new Pace.DigitsASecond(4));

        assertThat(sound.rows().get(1) - sound.rows().get(0)).isEqualTo(4.0, within(1e-9));
        assertThat(sound.rows().get(2) - sound.rows().get(1)).isEqualTo(4.0, within(1e-9));
        assertThat(sound.times().end() - sound.rows().get(2)).isEqualTo(2.0, within(1e-9));
    }

    @Test
    void unhurriedRowsFollowWithTheGap() {
        CallScript script = Calls.script("en", Wording.FULL, Calls.rows(1, 4, 2, 6, false));

        CallSound sound = Calls.sound(script, new Pace.Unhurried(1));

        for (int row = 0; row < 3; row++) {
            double gap = sound.rows().get(row + 1) - sound.ends().get(row);
            assertThat(gap).isBetween(0.9, 1.2);
        }
        assertThat(sound.times().greatestHurry()).isEqualTo(1);
    }

    @Test
    void aPaceThatNoVoiceKeepsIsRefusedWithTheLeastTime() {
        CallScript script = Calls.script("en", Wording.FULL, Calls.rows(5, 3, 16, 16, false));

        Sounded sounded = Sounding.of(script, new Pace.SecondsARow(1));

        assertThat(sounded).isInstanceOf(Sounded.TooFast.class);
        double least = ((Sounded.TooFast) sounded).least();
        assertThat(Sounding.of(script, new Pace.SecondsARow(Math.max(least + 0.6, 1.2))))
                .isInstanceOf(Sounded.Ready.class);
    }

    @Test
    void theAnswerAndThePraiseAreSaid() {
        CallScript script = Calls.script("ja", Wording.FULL, Calls.rows(5, 3, 3, 3, false));

        assertThat(Sounding.alone(script.answer(), Locale.JAPANESE)).isPresent();
        assertThat(Sounding.alone(script.right(), Locale.JAPANESE)).isPresent();
    }

    @Test
    void speechIsMadeShorterToTheSampleAndKeepsItsPitch() {
        float[] tone = new float[16_000];
        for (int i = 0; i < tone.length; i++) {
            tone[i] = (float) (0.5 * Math.sin(2 * Math.PI * 200 * i / 16_000));
        }

        float[] shorter = Stretch.to(7_001, tone);

        assertThat(shorter).hasSize(7_001);
        assertThat(crossings(shorter) / (7_001 / 16_000.0)).isCloseTo(400, within(8.0));
    }

    private static double crossings(float[] samples) {
        int crossings = 0;
        for (int i = 1; i < samples.length; i++) {
            crossings += samples[i - 1] < 0 != samples[i] < 0 ? 1 : 0;
        }
        return crossings;
    }

    @ParameterizedTest
    @CsvSource({
        "en, 1, CLEAR",
        "en, 1.5, CLEAR",
        "en, 2, HARD",
        "en, 2.35, LOST",
        "en, 3, LOST",
        "ja, 1.3, CLEAR",
        "ja, 1.8, HARD",
        "ja, 2.3, LOST"
    })
    void aHurriedVoiceIsUnderstoodLess(String language, double hurry, Understanding expected) {
        double share = Understanding.share(Locale.of(language), hurry);

        assertThat(Understanding.of(share)).isEqualTo(expected);
        assertThat(share).isBetween(0.0, 1.0);
        assertThat(Understanding.share(Locale.of(language), hurry + 0.01))
                .isLessThanOrEqualTo(share);
    }

    @Test
    void pacesAreReadAsPeopleWriteThem() {
        assertThat(Pace.parse("3s")).contains(new Pace.SecondsARow(3));
        assertThat(Pace.parse("2.5s")).contains(new Pace.SecondsARow(2.5));
        assertThat(Pace.parse("4d")).contains(new Pace.DigitsASecond(4));
        assertThat(Pace.parse("+1")).contains(new Pace.Unhurried(1));
        assertThat(Pace.parse("3")).isEmpty();
        assertThat(Pace.parse("0.1s")).isEmpty();
        assertThat(Pace.parse("+3s")).isEmpty();
    }
}
