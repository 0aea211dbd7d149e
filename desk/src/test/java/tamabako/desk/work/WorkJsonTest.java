package tamabako.desk.work;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.testkit.Golden.assertGolden;
import static tamabako.testkit.Property.forSeeds;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.frame.Direction;
import tamabako.frame.Frame;
import tamabako.frame.FrameKind;
import tamabako.frame.Played;
import tamabako.frame.Stroke;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.problems.text.ProblemText;
import tamabako.testkit.Draw;

class WorkJsonTest {

    @ParameterizedTest
    @CsvSource({
        "column, 54 - 29 + 38",
        "below-zero, 0 - 95 + 118",
        "product, 306 x 4",
        "quotient, 1225 / 35",
        "root, √729",
    })
    void aWorkedSumIsWrittenWhole(String name, String sum) {
        String pretty = json(sum).toPrettyString();

        assertGolden("work-" + name + ".json", pretty + "\n");
    }

    /// Sources: Heffelfinger and Flom, Abacus: Mystery of the Bead (34 + 78; 306 × 4); the states
    /// of 1225 ÷ 35 follow from the rules of Using an Abacus, Wikibooks; the square root is worked
    /// state by state in the root lessons of blog.goo.ne.jp/ktonegaw.
    @ParameterizedTest
    @CsvSource({
        "34 + 78, states, 034 004 104 102 112",
        "306 x 4, rests, 400306000 400306240 400300240 400312240 400012240",
        "1225 / 35, rests, 3500001225 3500041225 3500040025 3500030325 3500030175 3500035175"
                + " 3500035025 3500035000",
    })
    void theStatesAreThoseThatHandbooksPrint(String sum, String key, String states) {
        assertThat(String.join(" ", texts(json(sum).get(key)))).isEqualTo(states);
    }

    @Test
    void theAnswerBelowZeroNamesTheRodItIsLentFrom() {
        ObjectNode json = json("23 - 61");

        assertThat(json.get("answer").textValue()).isEqualTo("-38");
        assertThat(json.get("loan").intValue()).isEqualTo(2);
        assertThat(json("61 - 23").has("loan")).isFalse();
    }

    @Test
    void theRemainderAndThePlacesAreThereWhereThereAreSome() {
        assertThat(json("1226 / 35").get("remainder").textValue()).isEqualTo("1");
        assertThat(json("1226 / 35").has("places")).isFalse();
        assertThat(json("1226 / 35 to 2 places").get("places").intValue()).isEqualTo(2);
        assertThat(json("1 + 2").has("remainder")).isFalse();
    }

    @Test
    void theUnitRodIsCountedFromTheLeft() {
        ObjectNode json = json("8.9 + 56");

        assertThat(json.get("unit").intValue()).isEqualTo(2);
        assertThat(json.get("unitLetter").textValue()).isEqualTo("B");
        assertThat(json.get("rods").intValue()).isEqualTo(3);
    }

    @Test
    void theStrokesLeadFromStateToStateOnEveryKindOfFrame() {
        forSeeds(
                300,
                draw -> {
                    FrameKind kind = draw.oneOf(List.of(FrameKind.values()));
                    Setting setting = column(draw, kind);
                    Frame frame = Frame.clear(kind, setting.lowest(), setting.highest());
                    for (JsonNode step : setting.steps()) {
                        assertThat(frame.digits()).isEqualTo(step.get("before").textValue());
                        for (JsonNode stroke : step.get("strokes")) {
                            frame = played(frame, step.get("rod").intValue(), stroke);
                        }
                        assertThat(frame.digits()).isEqualTo(step.get("after").textValue());
                    }
                    assertThat(frame.digits()).isEqualTo(setting.states().getLast());
                });
    }

    private record Setting(int lowest, int highest, List<JsonNode> steps, List<String> states) {}

    private static Setting column(Draw draw, FrameKind kind) {
        List<java.math.BigDecimal> rows = new ArrayList<>();
        for (int row = draw.between(2, 6); row > 0; row--) {
            var number = draw.decimal(draw.length(6), draw.between(0, 2));
            rows.add(!rows.isEmpty() && draw.chance(1, 2) ? number.negate() : number);
        }
        WorkWay way = WorkWay.COMMON.with(kind);
        ObjectNode json = WorkJson.of(way.work(new Column("", rows, Terms.PLAIN)));
        List<JsonNode> steps = new ArrayList<>();
        json.get("setting").forEach(steps::add);
        json.get("steps").forEach(steps::add);
        int highest = json.get("unit").intValue() - 1;
        int lowest = highest - json.get("rods").intValue() + 1;
        return new Setting(lowest, highest, steps, texts(json.get("states")));
    }

    private static Frame played(Frame frame, int rod, JsonNode stroke) {
        Direction direction =
                stroke.get("direction").textValue().equals("toward-beam")
                        ? Direction.TOWARD_BEAM
                        : Direction.AWAY_FROM_BEAM;
        Stroke made =
                stroke.get("bead").textValue().equals("upper")
                        ? new Stroke.Upper(rod, direction)
                        : new Stroke.Lower(rod, stroke.get("beads").intValue(), direction);
        return switch (frame.play(made)) {
            case Played.Moved(Frame moved) -> moved;
            case Played.Refused refused -> throw new AssertionError(refused.toString());
        };
    }

    private static ObjectNode json(String sum) {
        return WorkJson.of(WorkWay.COMMON.work(ProblemText.parse(sum)));
    }

    private static List<String> texts(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false).map(JsonNode::textValue).toList();
    }
}
