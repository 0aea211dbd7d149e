package tamabako.desk.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.work.WorkJson;
import tamabako.desk.work.WorkWay;
import tamabako.frame.FrameKind;
import tamabako.problems.text.ProblemText;

/// The page script's side of the cases that the program reads too.
class BeadVectorsOnThePageTest {

    @RegisterExtension static final WorkDesk desk = new WorkDesk();
    private static Page page;

    @BeforeAll
    static void open() {
        page = desk.at("/frame", "en", 800).page();
    }

    @Test
    void everyStrokeOnEveryRodDoesWhatTheBeadsAllow() {
        List<List<String>> cases = Vectors.read("strokes.txt");
        Object outcomes =
                page.evaluate(
                        """
                        async cases => {
                          const { KINDS, play } = await import('/static/js/frame/rods.js');
                          return cases.map(([kind, rod, bead, beads, direction]) => {
                            const [upper, lower] = rod.split('.').map(Number);
                            const played = play(KINDS[kind], { upper, lower },
                                { bead, beads: Number(beads), direction });
                            return played.refused ?? `${played.rod.upper}.${played.rod.lower}`;
                          });
                        }
                        """,
                        cases);
        assertThat(outcomes).isEqualTo(cases.stream().map(given -> given.get(5)).toList());
    }

    @Test
    void everyTapIsTheStrokeThatTheHandMeans() {
        List<List<String>> cases = Vectors.read("taps.txt");
        Object outcomes =
                page.evaluate(
                        """
                        async cases => {
                          const { KINDS, play, tapped } = await import('/static/js/frame/rods.js');
                          return cases.map(([kind, rod, bead, number]) => {
                            const [upper, lower] = rod.split('.').map(Number);
                            const stroke = tapped({ upper, lower }, bead, number - 1);
                            const now = play(KINDS[kind], { upper, lower }, stroke).rod;
                            return `${stroke.direction} ${stroke.beads} ${now.upper}.${now.lower}`;
                          });
                        }
                        """,
                        cases);
        assertThat(outcomes)
                .isEqualTo(
                        cases.stream()
                                .map(given -> String.join(" ", given.subList(4, 7)))
                                .toList());
    }

    @ParameterizedTest
    @CsvSource({
        "MODERN, 9731 + 269",
        "MODERN, 0 - 95 + 118",
        "MODERN, 45.7 + 4.5",
        "MODERN, 306 x 42",
        "MODERN, 1225 / 35",
        "MODERN, ∛59319",
        "OLDER, 99 + 1 - 7 + 68",
        "SUANPAN, 54 - 29 + 38",
        "SUANPAN, 47 x 23",
    })
    void aWorkingIsReplayedStateByState(FrameKind kind, String sum) {
        WorkWay way = WorkWay.COMMON.with(kind);
        ObjectNode json = WorkJson.of(way.work(ProblemText.parse(sum)));
        List<String> told = new ArrayList<>(List.of("0".repeat(json.get("rods").intValue())));
        json.get("setting").forEach(step -> told.add(step.get("after").textValue()));
        json.get("steps").forEach(step -> told.add(step.get("after").textValue()));

        Object shown =
                page.evaluate(
                        """
                        async json => {
                          const { run } = await import('/static/js/frame/run.js');
                          const { digits } = await import('/static/js/frame/reading.js');
                          return run(JSON.parse(json)).states.map(digits);
                        }
                        """,
                        json.toString());
        assertThat(shown).isEqualTo(told);
    }

    @Test
    void numbersAreReadInFigures() {
        Object figures =
                page.evaluate(
                        """
                        async () => {
                          const { figures, digits } = await import('/static/js/frame/reading.js');
                          const rods = counts => counts.map(count =>
                              ({ upper: Math.floor(count / 5), lower: count % 5 }));
                          return [
                            figures(rods([0, 0, 0]), 0), figures(rods([0, 1, 2, 3, 4]), 0),
                            figures(rods([1, 2, 3, 4, 5]), 1), figures(rods([1, 2, 0, 0]), 2),
                            figures(rods([0, 0, 5]), 2), figures(rods([1, 15]), 0),
                            figures(rods(Array(27).fill(9)), 0), digits(rods([1, 15, 9]))];
                        }
                        """);
        assertThat(figures)
                .isEqualTo(
                        List.of(
                                "0",
                                "1,234",
                                "1,234.5",
                                "12",
                                "0.05",
                                "25",
                                "999,999,999,999,999,999,999,999,999",
                                "1F9"));
    }
}
