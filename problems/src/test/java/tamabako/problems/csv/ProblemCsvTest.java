package tamabako.problems.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tamabako.problems.Problem;
import tamabako.problems.ProblemFile;
import tamabako.problems.ProblemFile.Fault;
import tamabako.problems.Samples;
import tamabako.problems.json.ProblemJson;
import tamabako.testkit.Golden;
import tamabako.testkit.Property;

class ProblemCsvTest {

    private static List<String> lines(ProblemFile file) {
        return file.problems().stream().map(ProblemJson::line).toList();
    }

    @Test
    void whatIsWrittenComesBackWithoutLoss() {
        Property.forSeeds(
                2_000,
                draw -> {
                    List<Problem> problems = new ArrayList<>();
                    for (int i = draw.between(1, 5); i > 0; i--) {
                        problems.add(Samples.problem(draw).withId("n" + i));
                    }
                    ProblemFile back = ProblemCsv.read(ProblemCsv.write(problems));
                    assertThat(back.faults()).isEmpty();
                    assertThat(back.problems()).isEqualTo(problems);
                });
    }

    @Test
    void storiesAndPadsComeBackToo() {
        List<Problem> told =
                List.of(
                        ProblemJson.parse(
                                "{\"id\":\"5\",\"kind\":\"column\",\"rows\":[\"123\",\"678\"],"
                                        + "\"pad\":{\"line\":1,\"leaf\":4,\"leaves\":2}}"),
                        ProblemJson.parse(
                                "{\"id\":\"9\",\"kind\":\"column\",\"rows\":[\"1000\",\"-720\"],"
                                        + "\"story\":{\"en\":\"Six, at \\\"120\\\"\\neach\","
                                        + "\"ja\":\"おつりは\"},\"earlier\":[{\"kind\":\"product\","
                                        + "\"factors\":[\"120\",\"6\"]}]}"));
        assertThat(ProblemCsv.read(ProblemCsv.write(told)).problems()).isEqualTo(told);
    }

    @Test
    void aSpreadsheetHasANumberACellAndOnlyColumnsThatAreNeeded() {
        List<Problem> problems =
                List.of(
                        ProblemJson.parse(
                                "{\"id\":\"1\",\"kind\":\"column\",\"rows\":[\"54\",\"-29\",\"38\"]}"),
                        ProblemJson.parse(
                                "{\"id\":\"2\",\"kind\":\"quotient\",\"dividend\":\"1227\","
                                        + "\"divisor\":\"35\"}"),
                        ProblemJson.parse(
                                "{\"id\":\"3\",\"kind\":\"root\",\"degree\":2,\"of\":\"729\"}"));
        Golden.assertGolden("problems.csv", ProblemCsv.write(problems).replace("\r\n", "\n"));
    }

    @Test
    void aFileTypedByHandMayHaveItsColumnsInAnyOrderAndSumsInOneCell() {
        ProblemFile read =
                ProblemCsv.read(
                        "\uFEFFpoints,sum,#note\n10,54 - 29 + 38,easy\n,\"1,225 ÷ 35 =\",\n5,√２ to 3 places\n");
        assertThat(read.faults()).isEmpty();
        assertThat(lines(read))
                .containsExactly(
                        "{\"id\":\"1\",\"kind\":\"column\",\"rows\":[\"54\",\"-29\",\"38\"],\"points\":10}",
                        "{\"id\":\"2\",\"kind\":\"quotient\",\"dividend\":\"1225\",\"divisor\":\"35\"}",
                        "{\"id\":\"3\",\"kind\":\"root\",\"degree\":2,\"of\":\"2\",\"places\":3,\"points\":5}");
    }

    @Test
    void everyBadLineIsNamedAndTheRestIsRead() {
        ProblemFile read =
                ProblemCsv.read(
                        """
                        id,kind,1,2,3,answer
                        a,column,54,2x9,,
                        b,product,306,4,7,
                        c,sudoku,1,2,,
                        d,quotient,5,0,,
                        e,quotient,1,2,3,
                        f,root,-4,,,
                        g,column,5,,7,
                        h,column,1,2,3,6,9
                        i,column,"1,204",598,,
                        j,,1,2,,
                        k,column,,,,
                        """);
        assertThat(lines(read))
                .containsExactly("{\"id\":\"i\",\"kind\":\"column\",\"rows\":[\"1204\",\"598\"]}");
        StringBuilder told = new StringBuilder();
        for (Locale locale : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
            for (Fault fault : read.faults()) {
                told.append(fault.message(locale)).append("\n");
            }
        }
        Golden.assertGolden("unreadable-csv.txt", told.toString());
    }

    @Test
    void aHeadingThatIsNotKnownIsTold() {
        assertThat(fault("id,sum,palces\n1,2+3,4\n")).startsWith("line 1: The column \"palces\"");
        assertThat(fault("id,sum,id\n1,2+3,4\n")).startsWith("line 1: ").contains("twice");
        assertThat(fault("sum\n\"2+3\n")).startsWith("line 2: From here on this is no CSV");
    }

    private static String fault(String text) {
        ProblemFile read = ProblemCsv.read(text);
        assertThat(read.problems()).isEmpty();
        return read.faults().getFirst().message(Locale.ENGLISH);
    }

    @Test
    void anythingAtAllIsReadOrTold() {
        Property.forSeeds(
                3_000,
                draw -> {
                    StringBuilder text = new StringBuilder("id,kind,1,2,told,places,sum\n");
                    for (int i = draw.between(0, 60); i > 0; i--) {
                        text.append(
                                draw.oneOf(List.of(",", "\"", "\n", "7", "column", "-", "{", "é")));
                    }
                    ProblemFile read = ProblemCsv.read(text.toString());
                    read.faults().forEach(f -> assertThat(f.message(Locale.JAPANESE)).isNotBlank());
                });
    }
}
