package tamabako.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WordsTest {

    private static final Path FILES = Path.of("src/main/resources/words");
    private static final Path TEMPLATES = Path.of("src/main/jte");

    /// Only English has a word for one, and only readers of other languages need the trade's own.
    private static final Pattern ONLY_ENGLISH = Pattern.compile("trade\\..*|.*\\.one");

    private static final List<String> FILES_OF_PAGES =
            List.of(
                    "work",
                    "ladders",
                    "papers",
                    "classbook",
                    "entry",
                    "showing",
                    "accounts",
                    "room",
                    "turns",
                    "keeping",
                    "calls",
                    "progress",
                    "exams",
                    "turns");

    private final Languages languages = Languages.of(FILES_OF_PAGES);

    @Test
    void aLanguageIsThereBecauseItsFileIs() {
        assertThat(languages.all()).extracting(Words::tag).contains("en", "ja");
    }

    @Test
    void theChosenLanguageGoesBeforeTheBrowsers() {
        assertThat(choose("ja", "en").tag()).isEqualTo("ja");
        assertThat(choose("", "fr-CH, ja;q=0.9, en;q=0.8").tag()).isEqualTo("ja");
        assertThat(choose("", "en;q=0.4, ja-JP").tag()).isEqualTo("ja");
        assertThat(choose("xx", "tlh").tag()).isEqualTo("en");
        assertThat(choose("", ";;q=,,").tag()).isEqualTo("en");
    }

    private Words choose(String cookie, String accepted) {
        return languages.choose(Optional.of(cookie), Optional.of(accepted));
    }

    @Test
    void everyLanguageHasEveryTextWithTheSamePlaces() {
        List<String> files = new ArrayList<>(FILES_OF_PAGES);
        files.add("desk");
        for (String file : files) {
            Map<String, String> english = read(file, Locale.ENGLISH);
            for (Words words : languages.all()) {
                Map<String, String> texts = read(file, words.language());
                english.forEach((key, text) -> {
                    if (!ONLY_ENGLISH.matcher(key).matches()) {
                        assertThat(texts).as(words.tag()).containsKey(key);
                        assertThat(places(texts.getOrDefault(key, "")))
                                .as("%s in %s", key, words.tag())
                                .isSubsetOf(places(text));
                    }
                });
                assertThat(english.keySet()).as(words.tag()).containsAll(texts.keySet());
            }
        }
    }

    @Test
    void everyTextThatATemplateAsksForIsThere() throws IOException {
        List<String> asked = new ArrayList<>();
        try (Stream<Path> templates = Files.walk(TEMPLATES)) {
            for (Path template : templates.filter(Files::isRegularFile).toList()) {
                Pattern.compile("view\\.(?:say|count)\\(\"([a-z0-9.-]+)\"[,)]")
                        .matcher(Files.readString(template))
                        .results()
                        .map(found -> found.group(1))
                        .forEach(asked::add);
            }
        }
        assertThat(asked).hasSizeGreaterThan(60);
        assertThat(asked).allSatisfy(key -> assertThat(languages.english().find(key)).isPresent());
    }

    @Test
    void everyTroubleIsToldWithWhatAndHowToMend() {
        Set<String> troubles = new TreeSet<>();
        for (String key : read("desk", Locale.ENGLISH).keySet()) {
            if (key.startsWith("trouble.") && key.endsWith(".what")) {
                troubles.add(key.substring(0, key.length() - 5));
            }
        }
        assertThat(troubles).hasSizeGreaterThan(15);
        for (Words words : languages.all()) {
            assertThat(troubles)
                    .allSatisfy(key -> assertThat(words.say(key + ".mend")).isNotBlank());
        }
    }

    private static Set<String> places(String text) {
        return new TreeSet<>(
                Pattern.compile("\\{\\d}")
                        .matcher(text)
                        .results()
                        .map(MatchResult::group)
                        .toList());
    }

    private static Map<String, String> read(String file, Locale language) {
        Path path = FILES.resolve(file + "_" + language.toLanguageTag() + ".properties");
        Properties properties = new Properties();
        try (var reader = Files.newBufferedReader(path)) {
            properties.load(reader);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.forEach((key, value) -> texts.put("" + key, "" + value));
        return texts;
    }
}
