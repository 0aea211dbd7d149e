package tamabako.problems.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.problems.PadLine;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Story;
import tamabako.problems.Unreadable;

class ToldJsonTest {

    @Test
    void aLineOfASlipPadIsReadAndWrittenAlike() {
        String line =
                "{\"kind\":\"column\",\"rows\":[\"123\",\"678\"],"
                        + "\"pad\":{\"line\":1,\"leaf\":4,\"leaves\":2}}";

        Problem problem = ProblemJson.parse(line);

        assertThat(problem.terms().told()).contains(new PadLine(1, 4, 2));
        assertThat(ProblemJson.line(problem)).isEqualTo(line);
    }

    @Test
    void aStoryKeepsItsTextsAndItsEarlierSums() {
        String line =
                "{\"kind\":\"column\",\"rows\":[\"1000\",\"-720\"],"
                        + "\"story\":{\"en\":\"Change?\",\"ja\":\"おつりは？\"},"
                        + "\"earlier\":[{\"kind\":\"product\",\"factors\":[\"120\",\"6\"]}]}";

        Problem problem = ProblemJson.parse(line);

        assertThat(problem.terms().told())
                .contains(
                        new Story(
                                Map.of("en", "Change?", "ja", "おつりは？"),
                                List.of(
                                        (Product)
                                                ProblemJson.parse(
                                                        "{\"kind\":\"product\",\"factors\":[\"120\",\"6\"]}"))));
        assertThat(ProblemJson.line(problem)).isEqualTo(line);
    }

    @Test
    void aPadWithoutItsLeavesIsRefused() {
        assertThatThrownBy(() ->
                        ProblemJson.parse(
                                "{\"kind\":\"column\",\"rows\":[\"1\"],\"pad\":{\"line\":1,\"leaf\":2}}"))
                .isInstanceOfSatisfying(
                        Unreadable.class, fault -> assertThat(fault.field()).contains("pad"));
    }
}
