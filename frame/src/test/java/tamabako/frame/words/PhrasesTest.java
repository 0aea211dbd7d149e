package tamabako.frame.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/// Every language says everything.
class PhrasesTest {

    private static final Pattern BLANK = Pattern.compile("\\{([a-z]+)}");
    private static final Phrases ENGLISH = Phrases.of(Phrases.class, Locale.ENGLISH);

    static Stream<Locale> languages() {
        return Languages.all().stream();
    }

    @Test
    void englishComesFirstAndJapaneseIsThere() {
        assertThat(Languages.all()).startsWith(Locale.ENGLISH).contains(Locale.JAPANESE);
    }

    @ParameterizedTest
    @CsvSource({"ja-JP, ja", "ja, ja", "en-GB, en", "tlh, en", "und, en"})
    void aLanguageWithoutAFileIsSaidInEnglish(String asked, String spoken) {
        Locale locale = Locale.forLanguageTag(asked);

        assertThat(StepWords.of(locale).language().toLanguageTag()).isEqualTo(spoken);
    }

    @ParameterizedTest
    @MethodSource("languages")
    void aLanguageHasThePhrasesOfEnglish(Locale language) {
        assertThat(plain(Phrases.of(Phrases.class, language))).isEqualTo(plain(ENGLISH));
    }

    @ParameterizedTest
    @MethodSource("languages")
    void aPhraseHasNoBlankThatEnglishLacks(Locale language) {
        Phrases phrases = Phrases.of(Phrases.class, language);
        for (String key : phrases.keys()) {
            assertThat(blanks(phrases, key))
                    .as("%s in %s", key, language)
                    .isSubsetOf(blanks(ENGLISH, key));
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyPlaceHasItsOwnName(Locale language) {
        Set<String> names = new TreeSet<>();
        for (int place = -30; place <= 30; place++) {
            names.add(StepWords.of(language).place(place));
        }

        assertThat(names).hasSize(61).noneMatch(name -> name.contains("30"));
        assertThat(StepWords.of(language).place(31)).contains("31");
    }

    @Test
    void aBlankThatNothingFillsIsABug() {
        assertThatThrownBy(() -> ENGLISH.say("rod.place", Map.of("letter", "A")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Nothing fills {place} in rod.place.");
    }

    @Test
    void aNumberChoosesTheFormOfAPhrase() {
        assertThat(ENGLISH.say("stroke.lower.up", 1, Map.of())).isEqualTo("1 lower bead up");
        assertThat(ENGLISH.say("stroke.lower.up", 2, Map.of("beads", 2)))
                .isEqualTo("2 lower beads up");
    }

    /// The keys without the forms that depend on a number: languages differ in those.
    private static Set<String> plain(Phrases phrases) {
        return phrases.keys().stream()
                .filter(key -> !key.startsWith("place."))
                .map(PhrasesTest::plain)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String plain(String key) {
        return key.replaceAll("\\.\\d+$", "");
    }

    private static Set<String> blanks(Phrases phrases, String key) {
        return phrases.keys().stream()
                .filter(form -> plain(form).equals(plain(key)))
                .flatMap(form -> BLANK.matcher(phrases.template(form)).results())
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }
}
