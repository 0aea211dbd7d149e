package tamabako.voice.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.testkit.Property.forSeeds;

import com.ibm.icu.text.RuleBasedNumberFormat;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.testkit.Draw;
import tamabako.voice.script.CallWords;

class SpellingRulesTest {

    private static NumberWords words(String tag) {
        return CallWords.find(Locale.forLanguageTag(tag)).orElseThrow().numbers();
    }

    private static String full(String tag, long number) {
        return String.join(" ", words(tag).say(number));
    }

    /// Small numbers one by one, then numbers of every length up to 18 digits, with many zeros.
    private static LongStream numbers() {
        LongStream drawn =
                LongStream.range(0, 10_000)
                        .map(seed -> {
                            Draw draw = new Draw(seed);
                            long number = 0;
                            int digits = draw.between(4, 18);
                            for (int i = 0; i < digits; i++) {
                                boolean isZero = i > 0 && draw.chance(1, 2);
                                number = number * 10 + (isZero ? 0 : draw.between(1, 9));
                            }
                            return number;
                        });
        return LongStream.concat(LongStream.rangeClosed(0, 10_000), drawn);
    }

    @Test
    void americanNumbersAreSpelledAsTheUnicodeProjectSpellsThem() {
        RuleBasedNumberFormat icu =
                new RuleBasedNumberFormat(Locale.US, RuleBasedNumberFormat.SPELLOUT);
        numbers()
                .forEach(number ->
                        assertThat(full("en-US", number))
                                .isEqualTo(icu.format(number, "%spellout-cardinal")));
    }

    /// Its commas mark where the voice may rest; the words are compared.
    @Test
    void britishNumbersAreSpelledAsTheUnicodeProjectSpellsThem() {
        RuleBasedNumberFormat icu =
                new RuleBasedNumberFormat(Locale.UK, RuleBasedNumberFormat.SPELLOUT);
        numbers()
                .forEach(number ->
                        assertThat(full("en-GB", number))
                                .isEqualTo(
                                        icu.format(number, "%spellout-cardinal-verbose")
                                                .replace(",", "")));
    }

    @Test
    void anotherLanguageComesFromItsDataFileAlone() {
        RuleBasedNumberFormat icu =
                new RuleBasedNumberFormat(Locale.GERMANY, RuleBasedNumberFormat.SPELLOUT);
        numbers()
                .forEach(number ->
                        assertThat(full("de", number))
                                .isEqualTo(
                                        icu.format(number, "%spellout-numbering")
                                                .replace("\u00ad", "")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5|five",
                "120|one twenty",
                "300|three hundred",
                "305|three oh five",
                "12345|twelve , three forty-five",
                "1200567|one , two hundred , five sixty-seven",
                "7000004|seven , oh oh oh , oh oh four",
                "40080|forty , oh eighty"
            })
    void longNumbersAreShorterInGroups(long number, String said) {
        assertThat(String.join(" ", words("en").say(number, Wording.GROUPS, Meeting.OPEN)))
                .isEqualTo(said);
    }

    @Test
    void groupsHoldEveryFigure() {
        forSeeds(
                5_000,
                draw -> {
                    long number = draw.whole(draw.length(16)).longValue();
                    StringBuilder read = new StringBuilder();
                    for (String group :
                            String.join(" ", words("en").say(number, Wording.GROUPS, Meeting.OPEN))
                                    .split(" , ", -1)) {
                        String figures = figures(group);
                        read.append(
                                read.isEmpty()
                                        ? figures
                                        : "0".repeat(3 - figures.length()) + figures);
                    }
                    assertThat(read.toString()).isEqualTo(Long.toString(number));
                });
    }

    private static final Map<String, String> NAMES = names();

    private static Map<String, String> names() {
        RuleBasedNumberFormat icu =
                new RuleBasedNumberFormat(Locale.US, RuleBasedNumberFormat.SPELLOUT);
        Map<String, String> names = new HashMap<>(Map.of("oh", "0", "hundred", "00"));
        for (int i = 1; i < 100; i++) {
            names.put(icu.format(i), String.valueOf(i));
        }
        return names;
    }

    /// Reads "three oh five" and "oh forty" back, apart from the rules.
    private static String figures(String group) {
        StringBuilder figures = new StringBuilder();
        for (String word : group.split(" ", -1)) {
            figures.append(NAMES.get(word));
        }
        return figures.toString();
    }

    @Test
    void figuresAreSaidOneByOne() {
        assertThat(words("en").say(4096, Wording.FIGURES, Meeting.OPEN))
                .containsExactly("four", "zero", "nine", "six");
    }

    @Test
    void aNumberOutOfRangeIsRefused() {
        assertThatThrownBy(() -> words("en").say(-1)).hasMessageContaining("0 to 18 digits");
        assertThatThrownBy(() -> words("en").say(NumberWords.GREATEST + 1))
                .hasMessageContaining("0 to 18 digits");
    }

    @Test
    void rulesThatSayNothingAreRefused() {
        assertThatThrownBy(() -> SpellingRules.of(Map.of("x100", "hundred")))
                .hasMessageContaining("x100");
        assertThatThrownBy(() -> SpellingRules.of(Map.of("1", "one")))
                .hasMessageContaining("first numbers");
        assertThatThrownBy(() -> SpellingRules.of(Map.of("0", "zero[")))
                .hasMessageContaining("zero[");
    }
}
