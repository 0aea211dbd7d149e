package tamabako.desk.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.showing.safety.Field;
import tamabako.showing.safety.FlashAnalyser;
import tamabako.showing.safety.FlashReport;
import tamabako.showing.safety.Picture;
import tamabako.showing.safety.Shown;

/// The stage's own rules, run in a real browser: its look at flashes says what the server's says,
/// and its schedule keeps time on any screen.
class ShowingRulesTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    private static Scene scene;

    @BeforeAll
    static void open() {
        desk.book().settings().keep("showing.caution-read", "yes");
        scene = desk.scene("en", 1024);
        scene.open(
                "/showing/stage?digits=2&rows=5&seconds=1&per=each&look=figures&size=fit&place=here&seed=5");
    }

    /// Small pictures of a few colours at all sorts of times: every figure of both reports agrees.
    @Test
    void theStageFindsTheFlashesThatTheServerFinds() {
        SplittableRandom chance = new SplittableRandom(20_261);
        int[] colours = {0x000000, 0xFFFFFF, 0x2A231C, 0xFFFDF8, 0x808080, 0x5A5A5A, 0xE7E7E7};
        for (int round = 0; round < 150; round++) {
            boolean mayBeRed = round % 10 == 0;
            int width = chance.nextInt(3, 40);
            int height = chance.nextInt(3, 30);
            double step = chance.nextDouble(60, 420);
            List<int[]> pictures = new ArrayList<>();
            List<Double> times = new ArrayList<>();
            int[] pixels = new int[width * height];
            Arrays.fill(pixels, colours[chance.nextInt(colours.length)]);
            for (int k = 0; k < 24; k++) {
                times.add(k * step);
                pictures.add(pixels.clone());
                int colour =
                        mayBeRed && k == 7 ? 0xFF0000 : colours[chance.nextInt(colours.length)];
                int left = chance.nextInt(width);
                int top = chance.nextInt(height);
                for (int y = top; y < Math.min(height, top + 9); y++) {
                    for (int x = left; x < Math.min(width, left + 12); x++) {
                        pixels[y * width + x] = colour;
                    }
                }
            }
            Field field = new Field(chance.nextDouble(5, 45), chance.nextDouble(5, 35));

            FlashReport ours = analyse(width, height, pictures, times, field);
            Map<?, ?> theirs =
                    (Map<?, ?>)
                            scene.page()
                                    .evaluate(
                                            """
                                            async ({ width, height, pictures, times, field }) => {
                                              const { analyse, USUAL_PEAK } = await import('/static/js/showing/flash.js');
                                              const shown = pictures.map((pixels, k) => ({ at: times[k], picture: { width, height, pixels } }));
                                              const found = analyse(shown, field, USUAL_PEAK);
                                              return { ...found, shortestPeriod: String(found.shortestPeriod) };
                                            }
                                            """,
                                            Map.of(
                                                    "width", width,
                                                    "height", height,
                                                    "pictures",
                                                            pictures.stream()
                                                                    .map(ShowingRulesTest::boxed)
                                                                    .toList(),
                                                    "times", times,
                                                    "field",
                                                            Map.of(
                                                                    "width", field.width(),
                                                                    "height", field.height())));

            assertThat(theirs.get("verdict"))
                    .as("round %d", round)
                    .isEqualTo(ours.verdict().name());
            assertThat(number(theirs, "flashes")).isEqualTo(ours.flashes());
            assertThat(number(theirs, "flashesAtOnePlace")).isEqualTo(ours.flashesAtOnePlace());
            assertThat(number(theirs, "boxWidth")).isEqualTo(ours.boxWidth());
            assertThat(number(theirs, "boxHeight")).isEqualTo(ours.boxHeight());
            assertThat(number(theirs, "boxShare")).isCloseTo(ours.boxShare(), within(1e-12));
            assertThat(number(theirs, "inkShare")).isCloseTo(ours.inkShare(), within(1e-12));
            assertThat(Double.parseDouble((String) theirs.get("shortestPeriod")))
                    .isEqualTo(ours.shortestPeriod());
            assertThat(theirs.get("restAdvised")).isEqualTo(ours.restAdvised());
        }
    }

    /// What the browser really painted, photographed number by number and given to the server's
    /// analyser with the planned times.
    @ParameterizedTest
    @CsvSource({
        "false, 140, figures, SMALL_ENOUGH",
        "true,  140, figures, TOO_MUCH",
        "true,  400, figures, SLOW_ENOUGH",
        "false, 140, frame,   SMALL_ENOUGH"
    })
    void whatIsPaintedGetsTheVerdictOfThePlan(
            boolean anySize, double period, String look, String verdict) throws IOException {
        Page page = scene.page();
        Map<?, ?> plan =
                (Map<?, ?>)
                        page.evaluate(
                                """
                                async ({ anySize, period, look }) => {
                                  const at = '/static/js/showing/';
                                  const [{ figureWriter }, { beadWriter }, { layers }, { schedule }, flash, { FlashLook, COUNT_MARKS }] = await Promise.all(
                                    ['figures.js', 'beads.js', 'layers.js', 'schedule.js', 'flash.js', 'showing.js'].map((name) => import(at + name)));
                                  await document.fonts.load('700 100px "Desk Gothic"', '0123456789');
                                  document.body.classList.add('on-stage');
                                  const stage = document.getElementById('stage');
                                  stage.replaceChildren();
                                  const room = { width: stage.clientWidth * 0.94, height: stage.clientHeight * 0.8 };
                                  const texts = ['888', '-471', '305', '888', '96', '-888', '500', '613'];
                                  const style = getComputedStyle(stage);
                                  const write = look === 'frame' ? beadWriter : figureWriter;
                                  const field = flash.UNKNOWN_FIELD;
                                  const writer = write(texts, anySize ? Infinity : flash.tallestRow(field), room, style.color);
                                  const marks = figureWriter(COUNT_MARKS, flash.tallestRow(field), room, style.color);
                                  layers(stage, texts, writer);
                                  const plan = schedule({ hertz: 60, period, shown: period - 60, count: texts.length, anySize: anySize && period >= 360 });
                                  const found = new FlashLook({ numbers: writer, marks }, texts, style.backgroundColor, field).planned(plan);
                                  return { verdict: found.verdict, boxShare: found.boxShare, inkShare: found.inkShare, flashes: found.flashes,
                                    slots: plan.slots.map((slot) => [slot.on * 1000 / 60, slot.off * 1000 / 60]) };
                                }
                                """,
                                Map.of("anySize", anySize, "period", period, "look", look));
        List<?> slots = list(plan, "slots");
        Picture blank = photograph(page);
        List<Shown> shown = new ArrayList<>(List.of(new Shown(-1000, blank)));
        for (int k = 0; k < slots.size(); k++) {
            page.evaluate(
                    "k => { document.querySelectorAll('.shown-number')[k].style.opacity = '1'; }",
                    k);
            shown.add(
                    new Shown(
                            ((Number) ((List<?>) slots.get(k)).get(0)).doubleValue(),
                            photograph(page)));
            page.evaluate(
                    "k => { document.querySelectorAll('.shown-number')[k].style.opacity = '0'; }",
                    k);
            shown.add(new Shown(((Number) ((List<?>) slots.get(k)).get(1)).doubleValue(), blank));
        }
        page.evaluate("document.body.classList.remove('on-stage')");

        FlashReport painted = FlashAnalyser.analyse(shown, Field.UNKNOWN, FlashAnalyser.USUAL_PEAK);

        assertThat(plan.get("verdict")).isEqualTo(verdict);
        assertThat(painted.verdict().name()).isEqualTo(verdict);
        assertThat(painted.flashes()).isEqualTo(number(plan, "flashes"));
        assertThat(painted.boxShare()).isCloseTo(number(plan, "boxShare"), within(0.02));
        assertThat(painted.inkShare()).isCloseTo(number(plan, "inkShare"), within(0.02));
    }

    /// A clock that ticks like a screen: without a stall every number comes at the frame nearest to
    /// its time, at any refresh rate and any pace, and stays as long as asked to within a frame.
    @ParameterizedTest
    @CsvSource({"50", "60", "75", "90", "120", "144"})
    void onASteadyScreenEveryNumberComesAtTheNearestFrame(double hertz) {
        for (double period : new double[] {133.3, 142.857, 200, 333.3, 360, 1000, 3333}) {
            Map<?, ?> account = run(hertz, period, false, List.of());
            assertThat(account.get("exact")).as("%s Hz %s ms", hertz, period).isEqualTo(true);
            List<?> lines = list(account, "lines");
            assertThat(lines).hasSize(15);
            for (int k = 0; k < lines.size(); k++) {
                Map<?, ?> got = map(lines.get(k), "got");
                assertThat(number(got, "on"))
                        .as("number %d at %s Hz, %s ms", k, hertz, period)
                        .isCloseTo(k * period, within(500 / hertz + 0.3));
            }
            assertThat(number(account, "perSecond"))
                    .isCloseTo(1000 / period, within(1000 / period * 0.01 + 0.05));
        }
    }

    /// The onsets of seven numbers a second at 60 Hz, worked out beforehand: nothing drifts.
    @Test
    void sevenASecondOnAScreenOfSixty() {
        Object frames =
                scene.page()
                        .evaluate(
                                """
                                async () => {
                                  const { schedule } = await import('/static/js/showing/schedule.js');
                                  return schedule({ hertz: 60, period: 1000 / 7, shown: 90, count: 15, anySize: false }).slots.map((slot) => slot.on);
                                }
                                """);
        assertThat(frames)
                .isEqualTo(List.of(0, 9, 17, 26, 34, 43, 51, 60, 69, 77, 86, 94, 103, 111, 120));
    }

    /// The fewest frames for numbers of any size, so that no two onsets are closer than 360 ms.
    @ParameterizedTest
    @CsvSource({"50, 18", "60, 22", "75, 27", "90, 33", "120, 44", "144, 52"})
    void numbersOfAnySizeComeWholeFramesApart(double hertz, int frames) {
        Map<?, ?> account = run(hertz, 360, true, List.of());

        List<?> lines = list(account, "lines");
        for (int k = 0; k < lines.size(); k++) {
            Map<?, ?> asked = map(lines.get(k), "asked");
            assertThat(number(asked, "on")).isCloseTo(k * frames * 1000 / hertz, within(1e-6));
        }
    }

    /// Stalls of a few frames while a number is due: the number that suffered is named, those after
    /// the stall are in time again, and the run does not count.
    @ParameterizedTest
    @CsvSource({"50", "60", "75", "90", "120", "144"})
    void aStallIsFoundAndNothingAfterItIsLate(double hertz) {
        int stalled = 4;
        double at = stalled * 200 + 10;
        Map<?, ?> account = run(hertz, 200, false, List.of(at, 170.0));

        assertThat(account.get("exact")).isEqualTo(false);
        assertThat((List<?>) account.get("stalls")).hasSize(1);
        List<?> lines = list(account, "lines");
        for (int k = 0; k < lines.size(); k++) {
            Map<?, ?> line = (Map<?, ?>) lines.get(k);
            assertThat(line.get("exact"))
                    .as("number %d at %s Hz", k, hertz)
                    .isEqualTo(k != stalled);
        }
    }

    /// A stall that swallows a whole number: it is never shown late on top of the next one.
    @Test
    void aNumberWhoseWholeTimeIsStalledIsToldAsMissing() {
        Map<?, ?> account = run(60, 150, false, List.of(590.0, 170.0));

        List<?> lines = list(account, "lines");
        List<Integer> missing = new ArrayList<>();
        for (int k = 0; k < lines.size(); k++) {
            if (((Map<?, ?>) lines.get(k)).get("got") == null) {
                missing.add(k);
            }
        }
        assertThat(missing).containsExactly(4);
        assertThat(account.get("exact")).isEqualTo(false);
    }

    /// What the measurement calls a screen, from the gaps between its frames.
    @Test
    void aScreenIsMeasuredAndNamed() {
        Object told =
                scene.page()
                        .evaluate(
                                """
                                async () => {
                                  const { refreshOf } = await import('/static/js/showing/refresh.js');
                                  const gaps = (hertz) => Array.from({ length: 64 }, (_, i) => 1000 / hertz + (i % 2 ? 0.2 : -0.2));
                                  const uneven = gaps(60).map((gap, i) => (i % 10 === 0 ? 2 * gap : gap));
                                  return [50, 59.94, 75, 90, 120, 144, 30].map((hertz) => refreshOf(gaps(hertz)))
                                    .concat(refreshOf(uneven)).map((each) => [Math.round(each.hertz), each.steady, each.slow].join(' '));
                                }
                                """);
        assertThat(told)
                .isEqualTo(
                        List.of(
                                "50 true false",
                                "60 true false",
                                "75 true false",
                                "90 true false",
                                "120 true false",
                                "144 true false",
                                "30 true true",
                                "60 false false"));
    }

    /// Fifteen numbers on a screen of so many frames a second whose frames come a little unevenly.
    ///
    /// @param stall when it stalls and for how long, in milliseconds; empty for never
    private static Map<?, ?> run(double hertz, double period, boolean anySize, List<Double> stall) {
        return (Map<?, ?>)
                scene.page()
                        .evaluate(
                                """
                                async ({ hertz, period, anySize, stall: [from, lasts] }) => {
                                  const [{ schedule }, { Run }] = await Promise.all(['schedule.js', 'run.js'].map((name) => import('/static/js/showing/' + name)));
                                  const plan = schedule({ hertz, period, shown: period * 0.7, count: 15, anySize });
                                  const up = new Set();
                                  const run = new Run(plan, (number, seen) => { seen ? up.add(number) : up.delete(number); if (up.size > 1) throw new Error('two at once'); });
                                  for (let frame = 0; !run.ended && frame < 1e5; frame++) {
                                    const now = frame * 1000 / hertz;
                                    if (from === undefined || now < from || now >= from + lasts) {
                                      run.frame(7000 + now + (frame % 3) * 0.1);
                                    }
                                  }
                                  return run.account();
                                }
                                """,
                                Map.of(
                                        "hertz", hertz,
                                        "period", period,
                                        "anySize", anySize,
                                        "stall", stall));
    }

    private static FlashReport analyse(
            int width, int height, List<int[]> pictures, List<Double> times, Field field) {
        List<Shown> shown = new ArrayList<>();
        for (int k = 0; k < pictures.size(); k++) {
            shown.add(new Shown(times.get(k), new Picture(width, height, pictures.get(k))));
        }
        return FlashAnalyser.analyse(shown, field, FlashAnalyser.USUAL_PEAK);
    }

    private static List<Integer> boxed(int[] pixels) {
        return Arrays.stream(pixels).boxed().toList();
    }

    private static double number(Map<?, ?> found, String name) {
        return ((Number) Objects.requireNonNull(found.get(name), name)).doubleValue();
    }

    private static List<?> list(Map<?, ?> found, String name) {
        return (List<?>) Objects.requireNonNull(found.get(name), name);
    }

    private static Map<?, ?> map(Object found, String name) {
        return (Map<?, ?>) Objects.requireNonNull(((Map<?, ?>) found).get(name), name);
    }

    private static Picture photograph(Page page) throws IOException {
        byte[] png = page.locator("#stage").screenshot(new Locator.ScreenshotOptions());
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        int[] pixels =
                image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return new Picture(image.getWidth(), image.getHeight(), pixels);
    }
}
