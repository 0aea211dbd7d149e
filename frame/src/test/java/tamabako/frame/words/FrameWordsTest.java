package tamabako.frame.words;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.frame.words.Samples.assertSaid;
import static tamabako.frame.words.Samples.step;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.Cause;
import tamabako.frame.Fingering;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Motion;
import tamabako.frame.Outcome;
import tamabako.frame.Rod;

/// Places, fingers, beads and answers in words.
class FrameWordsTest {

    private static final StepWords ENGLISH = StepWords.of(Locale.ENGLISH);
    private static final StepWords JAPANESE = StepWords.of(Locale.JAPANESE);

    @ParameterizedTest
    @CsvSource({
        "0, ones, 一の位",
        "1, tens, 十の位",
        "2, hundreds, 百の位",
        "3, thousands, 千の位",
        "4, ten-thousands, 一万の位",
        "5, hundred-thousands, 十万の位",
        "6, millions, 百万の位",
        "7, ten-millions, 千万の位",
        "8, hundred-millions, 一億の位",
        "9, billions, 十億の位",
        "12, trillions, 一兆の位",
        "15, quadrillions, 千兆の位",
        "16, ten-quadrillions, 一京の位",
        "20, hundred-quintillions, 一垓の位",
        "-1, tenths, 小数第一位",
        "-2, hundredths, 小数第二位",
        "-3, thousandths, 小数第三位",
        "-4, ten-thousandths, 小数第四位",
        "-6, millionths, 小数第六位",
        "-10, ten-billionths, 小数第十位",
    })
    void eachPlaceHasItsName(int place, String english, String japanese) {
        assertThat(ENGLISH.place(place)).isEqualTo(english);
        assertThat(JAPANESE.place(place)).isEqualTo(japanese);
    }

    /// For each fingering: the beads that one motion can move, as in held and digit.
    @Test
    void everyMotionUnderEveryFingering() {
        assertSaid(
                "motions",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    for (Fingering fingering : Fingering.values()) {
                        for (String sum :
                                List.of("0 3", "4 -1", "0 5", "5 -5", "0 8", "4 3", "6 -4")) {
                            said.put(
                                    "%s: %s".formatted(fingering, sum),
                                    words.motion(firstMotion(sum), fingering));
                        }
                    }
                    return said;
                });
    }

    private static Motion firstMotion(String sum) {
        int digit = Integer.parseInt(sum.substring(2));
        Rod held = Rod.showing(sum.charAt(0) - '0');
        return step(held, digit, new Cause.Row(1, 0)).motions().getFirst();
    }

    @Test
    void everyRodOfEveryFrame() {
        assertSaid(
                "rods",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    for (int upper = 0; upper <= 2; upper++) {
                        for (int lower = 0; lower <= 5; lower++) {
                            said.put(
                                    "%d upper, %d lower".formatted(upper, lower),
                                    words.read(new Rod(upper, lower)));
                        }
                    }
                    return said;
                });
    }

    @Test
    void aWholeFrame() {
        Frame clear = Frame.clear(FrameKind.MODERN, -2, 4);
        Frame set = clear.with(3, Rod.showing(1)).with(1, Rod.showing(7)).with(-1, Rod.showing(5));
        assertSaid(
                "frames",
                words -> {
                    Map<String, String> said = new LinkedHashMap<>();
                    said.put(clear.digits(), words.read(clear));
                    said.put(set.digits(), words.read(set));
                    return said;
                });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1180 | | | The answer is 1,180. | 答えは1,180です。",
                "0.0350 | | | The answer is 0.035. | 答えは0.035です。",
                "1234567.8912 | | | The answer is 1,234,567.8912. | 答えは1,234,567.8912です。",
                "5 | 2 | | The answer is 5, remainder 2. | 答えは5、あまり2です。",
                "-38 | | 2 | The answer is −38: 100 is still on loan, so read what is missing to 100."
                        + " | 答えは−38です。100を借りたままなので、100に対する補数を読みます。",
            })
    void theAnswer(
            BigDecimal answer,
            BigDecimal remainder,
            Integer loan,
            String english,
            String japanese) {
        Outcome outcome =
                new Outcome(
                        answer,
                        Optional.ofNullable(remainder),
                        loan == null ? OptionalInt.empty() : OptionalInt.of(loan));

        assertThat(ENGLISH.answer(outcome)).isEqualTo(english);
        assertThat(JAPANESE.answer(outcome)).isEqualTo(japanese);
    }
}
