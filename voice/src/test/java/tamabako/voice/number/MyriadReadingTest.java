package tamabako.voice.number;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Property.forSeeds;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MyriadReadingTest {

    private static final MyriadReading JAPANESE = new MyriadReading();

    private static String kana(long number) {
        return String.join("", JAPANESE.say(number));
    }

    /// Sources: "four is yon, a thousand is sen" wakumusu.com (how sums are called; 94, 1382); the
    /// sound changes of hundreds, thousands and before 兆 and 京: NHK pronunciation as the readers of
    /// Japanese for learners print them (from memory).
    @ParameterizedTest
    @CsvSource({
        "94, きゅうじゅうよん",
        "1382, せんさんびゃくはちじゅうに",
        "0, れい",
        "4, よん",
        "7, なな",
        "9, きゅう",
        "10, じゅう",
        "14, じゅうよん",
        "100, ひゃく",
        "200, にひゃく",
        "300, さんびゃく",
        "400, よんひゃく",
        "600, ろっぴゃく",
        "700, ななひゃく",
        "800, はっぴゃく",
        "900, きゅうひゃく",
        "1000, せん",
        "1001, せんいち",
        "3000, さんぜん",
        "6000, ろくせん",
        "8000, はっせん",
        "10000, いちまん",
        "11000, いちまんせん",
        "100000, じゅうまん",
        "1000000, ひゃくまん",
        "3000000, さんびゃくまん",
        "10000000, いっせんまん",
        "11000000, せんひゃくまん",
        "12000000, せんにひゃくまん",
        "100000000, いちおく",
        "800000000, はちおく",
        "1000000000, じゅうおく",
        "100000000000, いっせんおく",
        "1000000000000, いっちょう",
        "6000000000000, ろくちょう",
        "8000000000000, はっちょう",
        "10000000000000, じゅっちょう",
        "11000000000000, じゅういっちょう",
        "18000000000000, じゅうはっちょう",
        "20000000000000, にじゅっちょう",
        "21000000000000, にじゅういっちょう",
        "100000000000000, ひゃくちょう",
        "1000000000000000, いっせんちょう",
        "10000000000000000, いっけい",
        "60000000000000000, ろっけい",
        "80000000000000000, はっけい"
    })
    void irregularReadings(long number, String reading) {
        assertThat(kana(number)).isEqualTo(reading);
    }

    /// Before "ten" (point) and "sento" (cent): itten, hatten, jutten (from memory).
    @ParameterizedTest
    @CsvSource({
        "1, いっ",
        "8, はっ",
        "10, じゅっ",
        "18, じゅうはっ",
        "80, はちじゅっ",
        "3, さん",
        "6, ろく",
        "100, ひゃく"
    })
    void soundsAreCutShortBeforeAHardSound(long number, String reading) {
        assertThat(String.join("", JAPANESE.say(number, Wording.FULL, Meeting.HARD)))
                .isEqualTo(reading);
    }

    @Test
    void everyReadingOfUpToSixteenDigitsReadsBack() {
        for (long number = 0; number <= 20_000; number++) {
            assertThat(ReadKana.number(kana(number))).as(kana(number)).isEqualTo(number);
        }
        forSeeds(
                20_000,
                draw -> {
                    long number = 0;
                    int digits = draw.length(16);
                    for (int i = 0; i < digits; i++) {
                        boolean isZero = i > 0 && draw.chance(2, 5);
                        number = number * 10 + (isZero ? 0 : draw.between(1, 9));
                    }
                    assertThat(ReadKana.number(kana(number))).as(kana(number)).isEqualTo(number);
                });
    }

    /// The Unicode project spells Japanese in kanji; each kanji is read alone, sound changes apart.
    @Test
    void theSameWordsAsInKanji() {
        RuleBasedNumberFormat icu =
                new RuleBasedNumberFormat(Locale.JAPAN, RuleBasedNumberFormat.SPELLOUT);
        forSeeds(
                5_000,
                draw -> {
                    long number = draw.whole(draw.length(16)).longValue();
                    assertThat(ReadKana.kanji(kana(number)))
                            .isEqualTo(
                                    icu.format(number, "%spellout-cardinal")
                                            .replaceAll("(^|[万億兆])一千(?=[万億兆])", "$1千"));
                });
    }
}
