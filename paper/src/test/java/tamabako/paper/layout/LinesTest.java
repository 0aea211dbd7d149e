package tamabako.paper.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.paper.pdf.PrintFonts;
import tamabako.paper.wish.PageSize;
import tamabako.paper.wish.Size;
import tamabako.paper.words.PrintWords;

/// Where a text is broken into lines, tried at every width. The characters that no line begins or
/// ends with are those of the Japanese rules of line breaking (kinsoku, JIS X 4051).
class LinesTest {

    private static final double SIZE = 10;
    private static final String NEVER_FIRST = "、。,.・?!？！」』)）】〕ー々ぁぃぅぇぉっゃゅょァィゥェォッャュョ%％";
    private static final String NEVER_LAST = "「『(（【〔¥$";

    private static final String JAPANESE =
            "「港町」の店では、1冊¥1,280のノートを24冊と(約)3.5kgの干物を12,345匹、ちょっと安く"
                    + "ケーキも買いました！25％引きで、代金は全部でいくらですか？端数は四捨五入します。";
    private static final String ENGLISH =
            "A boat carries 1,280.5 kg of fish (about 12% of all) at ¥12,345,678 a crate. What does"
                    + " the whole catch of 3 days cost?";

    @Test
    void aJapaneseLineNeverBeginsWithAClosingMarkNorEndsWithAnOpeningOne() {
        for (List<String> lines : atEveryWidth(JAPANESE)) {
            for (int i = 1; i < lines.size(); i++) {
                assertThat(NEVER_FIRST).doesNotContain(lines.get(i).substring(0, 1));
                assertThat(NEVER_LAST)
                        .doesNotContain(lines.get(i - 1).substring(lines.get(i - 1).length() - 1));
            }
        }
    }

    @Test
    void numbersStayWholeAndTogetherWithWhatTheyCount() {
        for (List<String> lines : atEveryWidth(JAPANESE)) {
            for (String whole : List.of("¥1,280の", "24冊", "3.5kg", "12,345匹", "25％")) {
                assertThat(lines).as("%s", lines).anyMatch(line -> line.contains(whole));
            }
        }
        for (List<String> lines : atEveryWidth(ENGLISH)) {
            assertThat(lines).anyMatch(line -> line.contains("¥12,345,678"));
            assertThat(lines).anyMatch(line -> line.contains("1,280.5"));
        }
    }

    @Test
    void noLineIsWiderThanItsRoomAndNothingIsLost() {
        for (String text : List.of(JAPANESE, ENGLISH)) {
            for (int width = 90; width < 400; width += 3) {
                List<String> lines = Lines.of(setting(), Face.REGULAR, SIZE, text, width);
                double room = width;
                assertThat(lines)
                        .allMatch(line -> setting().width(Face.REGULAR, SIZE, line) <= room);
                String blank = text.equals(ENGLISH) ? " " : "";
                assertThat(String.join(blank, lines)).isEqualTo(text);
            }
        }
    }

    @Test
    void aWordLongerThanItsRoomIsBrokenAnywhere() {
        List<String> lines = Lines.of(setting(), Face.REGULAR, SIZE, "a".repeat(50), 40);
        assertThat(lines.size()).isGreaterThan(4);
        assertThat(String.join("", lines)).isEqualTo("a".repeat(50));
    }

    private static List<List<String>> atEveryWidth(String text) {
        List<List<String>> all = new ArrayList<>();
        for (int width = 90; width < 400; width += 3) {
            all.add(Lines.of(setting(), Face.REGULAR, SIZE, text, width));
        }
        return all;
    }

    private static Setting setting() {
        PrintWords words = PrintWords.of(Locale.JAPANESE);
        return new Setting(words, Size.NORMAL, Page.of(PageSize.A4), PrintFonts.SHARED);
    }
}
