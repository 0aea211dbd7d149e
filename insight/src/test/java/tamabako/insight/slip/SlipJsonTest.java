package tamabako.insight.slip;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tamabako.testkit.Golden;

class SlipJsonTest {

    private static final SlipFinder FINDER = new SlipFinder(Rates.shipped());

    @Test
    void aFindingHasThePlainShape() throws Exception {
        StringBuilder lines = new StringBuilder();
        for (String[] asked :
                new String[][] {
                    {"34 78", "12"}, {"34 78", "112"}, {"84/28", "2"}, {"34 78", "9276351"}
                }) {
            Finding finding = FINDER.find(SlipFinderTest.problem(asked[0]), asked[1]);
            lines.append(
                            new ObjectMapper()
                                    .writerWithDefaultPrettyPrinter()
                                    .writeValueAsString(SlipJson.of(finding)))
                    .append('\n');
        }

        Golden.assertGolden("finding.json", lines.toString());
    }

    @Test
    void aWrongAnswerHasItsSlipsInOrder() {
        Finding finding = FINDER.find(SlipFinderTest.problem("34 78"), "12");

        JsonNode node = SlipJson.of(finding);

        assertThat(node.get("right").booleanValue()).isFalse();
        assertThat(node.get("expected").textValue()).isEqualTo("112");
        JsonNode first = node.get("slips").get(0);
        List<String> names = new ArrayList<>();
        first.fieldNames().forEachRemaining(names::add);
        assertThat(names).containsExactly("slip", "share", "row", "rod", "say");
        assertThat(first.get("slip").textValue()).isEqualTo("carry-left-out");
        assertThat(first.get("row").intValue()).isEqualTo(2);
        assertThat(first.get("rod").intValue()).isEqualTo(2);
        assertThat(first.get("say").get("en").textValue()).startsWith("Row 2: the carry");
        assertThat(first.get("say").get("ja").textValue()).startsWith("2口目：");
        assertThat(node.get("cannotTell")).isEmpty();
    }

    @Test
    void sharesHaveFourPlaces() {
        JsonNode node = SlipJson.of(FINDER.find(SlipFinderTest.problem("84/28"), "2"));

        for (JsonNode slip : node.get("slips")) {
            assertThat(slip.get("share").decimalValue().scale()).isLessThanOrEqualTo(4);
        }
        assertThat(node.get("cannotTell").get(0).textValue()).isEqualTo("quotient-off-by-one");
    }
}
