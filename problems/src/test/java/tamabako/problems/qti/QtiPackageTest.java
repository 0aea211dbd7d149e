package tamabako.problems.qti;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.problems.Problem;
import tamabako.problems.ProblemFile;
import tamabako.problems.Samples;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.testkit.Golden;
import tamabako.testkit.Property;

class QtiPackageTest {

    private static final Problem COLUMN =
            ProblemJson.parse(
                    "{\"id\":\"1\",\"kind\":\"column\",\"rows\":[\"1540.5\",\"-29.25\",\"38\"],"
                            + "\"points\":5}");
    private static final Problem QUOTIENT =
            ProblemJson.parse(
                    "{\"id\":\"2\",\"kind\":\"quotient\",\"dividend\":\"1227\",\"divisor\":\"35\"}");
    private static final Problem STORY =
            ProblemJson.parse(
                    "{\"id\":\"3\",\"kind\":\"column\",\"rows\":[\"2000\",\"-720\"],\"unit\":\"JPY\","
                            + "\"story\":{\"en\":\"Six buns & a <note>.\",\"ja\":\"おつりはいくらですか。\"}}");

    private static ProblemFile read(String xml) {
        return QtiPackage.read(Map.of("item.xml", xml));
    }

    @Test
    void whatIsWrittenComesBackWithoutLoss() {
        Property.forSeeds(
                1_000,
                draw -> {
                    Problem problem = Samples.problem(draw);
                    Locale locale = draw.oneOf(List.of(Locale.ENGLISH, Locale.JAPANESE));
                    ProblemFile back = read(QtiItem.write(problem, locale));
                    assertThat(back.faults()).isEmpty();
                    assertThat(back.problems()).containsExactly(problem);
                });
    }

    @Test
    void everyAnswerThatAnItemTakesIsRightByTheWritingRulesOfALesson() {
        Property.forSeeds(
                1_000,
                draw -> {
                    Problem problem = Samples.problem(draw);
                    assertThat(QtiAnswers.of(problem))
                            .isNotEmpty()
                            .allMatch(form ->
                                    Marker.mark(problem, form, WritingRules.EASY).isRight());
                });
    }

    @Test
    void theAnswerIsTakenWithCommasAndWithout() {
        assertThat(QtiAnswers.of(COLUMN)).containsExactly("1549.25", "1,549.25");
        assertThat(QtiAnswers.of(QUOTIENT)).startsWith("35 r 2").contains("35 あまり 2", "35…2");
        assertThat(QtiAnswers.of(STORY)).containsExactly("1280", "¥1,280", "1,280");
    }

    @Test
    void aPackageIsAManifestATestAndItsItems() {
        StringBuilder all = new StringBuilder();
        QtiPackage.files(List.of(COLUMN, QUOTIENT, STORY), "Tuesday", Locale.ENGLISH)
                .forEach((path, text) -> all.append("== ").append(path).append("\n").append(text));
        Golden.assertGolden("qti.txt", all.toString());
    }

    @Test
    void anItemAsksInTheLanguageOfItsReaders() {
        assertThat(QtiItem.write(STORY, Locale.JAPANESE))
                .contains("xml:lang=\"ja\"", "title=\"3: おつりはいくらですか。\"", "<p>おつりはいくらですか。</p>");
    }

    @Test
    void aPackageIsReadWhole() {
        List<Problem> problems = List.of(COLUMN, QUOTIENT, STORY);
        ProblemFile back = QtiPackage.read(QtiPackage.files(problems, "x", Locale.ENGLISH));
        assertThat(back.faults()).isEmpty();
        assertThat(back.problems()).isEqualTo(problems);
    }

    @Test
    void anItemFromElsewhereIsReadWhereItShowsASum() {
        ProblemFile read =
                read(
                        item(
                                "<p><b>1,225</b> ÷ 35 = <qti-text-entry-interaction/></p>",
                                "<qti-value>35</qti-value>"));
        assertThat(read.faults()).isEmpty();
        assertThat(ProblemJson.line(read.problems().getFirst()))
                .isEqualTo(
                        "{\"id\":\"1\",\"kind\":\"quotient\",\"dividend\":\"1225\",\"divisor\":\"35\"}");
    }

    private static String item(String body, String right) {
        return "<qti-assessment-item><qti-response-declaration><qti-correct-response>"
                + right
                + "</qti-correct-response></qti-response-declaration>\n<qti-item-body>"
                + body
                + "</qti-item-body></qti-assessment-item>";
    }

    @Test
    void whatCannotBeReadIsNamedByFileAndLine() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("good.xml", QtiItem.write(COLUMN, Locale.ENGLISH));
        files.put("broken.xml", "<qti-assessment-item>\n<p></qti-assessment-item>");
        files.put("prose.xml", "\n" + item("<p>Who was Hideyoshi?</p>", ""));
        files.put("other.xml", item("<p>2 + 3 =</p>", "<qti-value>6</qti-value>"));
        files.put("json.xml", QtiItem.write(COLUMN, Locale.ENGLISH).replace("-29.25\"", "-2x9\""));
        files.put(
                "entity.xml",
                "<!DOCTYPE a [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>\n"
                        + item("<p>2 + 3 = &e;</p>", ""));
        files.put("manifest.xml", "<manifest/>");
        ProblemFile read = QtiPackage.read(files);
        assertThat(read.problems()).containsExactly(COLUMN);
        StringBuilder told = new StringBuilder();
        for (Locale locale : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            read.faults().forEach(fault -> told.append(fault.message(locale)).append("\n"));
        }
        Golden.assertGolden("unreadable-qti.txt", told.toString());
        assertThat(read("<manifest/>").faults().getFirst().message(Locale.ENGLISH))
                .startsWith("No item is in it");
    }

    @Test
    void anythingAtAllIsReadOrTold() {
        String good = QtiItem.write(COLUMN, Locale.ENGLISH);
        Property.forSeeds(
                2_000,
                draw -> {
                    StringBuilder xml = new StringBuilder(good);
                    for (int i = draw.between(1, 6); i > 0; i--) {
                        xml.setCharAt(
                                draw.between(0, xml.length() - 1), (char) draw.between(1, 255));
                    }
                    ProblemFile read = read(xml.toString());
                    read.faults().forEach(f -> assertThat(f.message(Locale.JAPANESE)).isNotBlank());
                });
    }
}
