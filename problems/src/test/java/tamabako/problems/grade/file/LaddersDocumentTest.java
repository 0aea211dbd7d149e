package tamabako.problems.grade.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tamabako.problems.grade.Figure;
import tamabako.problems.grade.Ladder;

/// The page that tells the format to teachers is true.
class LaddersDocumentTest {

    private static final Path DOCUMENT = Path.of("..", "docs", "ladders.md");
    private static final String FILE = "kite-room.yaml";

    /// What to write otherwise in the sample, so that every sort of place refuses a key.
    private static final Map<String, String> ODD =
            Map.ofEntries(
                    Map.entry("about:", "odd:"),
                    Map.entry("confirmed: no", "odd: no"),
                    Map.entry("numbering:", "odd:"),
                    Map.entry("choose:", "odd:"),
                    Map.entry("scored by:", "odd:"),
                    Map.entry("rank: low", "odd: low"),
                    Map.entry("mode: mental", "odd: mental"),
                    Map.entry("second half: 2", "odd: 2"),
                    Map.entry("running carries:", "odd:"),
                    Map.entry("rounded down:", "odd:"),
                    Map.entry("kind: products", "kind: quotients"),
                    Map.entry("pad leaves:", "odd:"),
                    Map.entry("degree:", "odd:"),
                    Map.entry("kind: roots", "kind: stories"),
                    Map.entry("kind: slip pad", "kind: readings"));

    @Test
    void theExampleIsReadWithoutMistakes() throws IOException {
        LadderFile read = LadderFile.read(FILE, example());

        assertThat(read).isInstanceOf(LadderFile.Read.class);
        Ladder ladder = ((LadderFile.Read) read).ladder();
        assertThat(ladder.grades()).hasSize(2);
        assertThat(ladder.name().in(Locale.JAPANESE)).isEqualTo("凧の間の級");
    }

    @Test
    void theMistakeThatIsShownIsTold() throws IOException {
        String yaml = example().replace("time: 15 min", "time: 18 hours");
        LadderFile.Mistaken read = (LadderFile.Mistaken) LadderFile.read(FILE, yaml);

        assertThat(Files.readString(DOCUMENT))
                .contains("> " + read.mistakes().getFirst().message(Locale.ENGLISH));
    }

    @Test
    void everyKeyIsExplained() throws IOException {
        Set<String> keys = new TreeSet<>();
        ODD.forEach((written, instead) -> {
            List<String> known = known(SampleLadder.YAML.replace(written, instead));
            assertThat(known).as(instead).isNotEmpty();
            keys.addAll(known);
        });

        String document = Files.readString(DOCUMENT);
        assertThat(keys).hasSizeGreaterThan(50);
        assertThat(keys)
                .allSatisfy(key ->
                        assertThat(document).containsPattern("`[^`\n]*\\b" + key + "\\b[^`\n]*`"));
    }

    @Test
    void everyFigureAndEveryShippedLadderIsListed() throws IOException {
        String document = Files.readString(DOCUMENT);

        for (Figure figure : Figure.values()) {
            assertThat(document).contains("`" + figure.word() + "`");
        }
        for (String name : LadderTexts.names()) {
            assertThat(document).contains("| `" + name + "` |");
        }
    }

    private static List<String> known(String yaml) {
        LadderFile.Mistaken read = (LadderFile.Mistaken) LadderFile.read(FILE, yaml);
        return read.mistakes().stream()
                .map(Mistake::fault)
                .filter(Fault.UnknownKey.class::isInstance)
                .flatMap(fault -> ((Fault.UnknownKey) fault).known().stream())
                .toList();
    }

    /// The one block of YAML on the page.
    private static String example() throws IOException {
        String document = Files.readString(DOCUMENT);
        String mark = "```yaml\n";
        int start = document.indexOf(mark) + mark.length();
        assertThat(document.indexOf(mark, start)).isNegative();
        return document.substring(start, document.indexOf("```", start));
    }
}
