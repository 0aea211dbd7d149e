package tamabako.desk.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// The free frame under keys, fingers and assistive technology.
class FreeFrameTest {

    private static final int LAST = 12;

    @RegisterExtension static final WorkDesk desk = new WorkDesk();

    @Test
    void everyDigitIsReachedByKeysAlone() {
        Page page = desk.again("/frame", 1024);
        Locator rods = rods(page);
        rods.nth(LAST).focus();

        for (int digit = 1; digit <= 9; digit++) {
            page.keyboard().press("ArrowUp");
            assertThat(value(rods.nth(LAST))).isEqualTo(digit);
        }
        page.keyboard().press("ArrowUp");
        assertThat(value(rods.nth(LAST))).as("nine is the most").isEqualTo(9);
        for (int digit = 0; digit <= 9; digit++) {
            page.keyboard().press(String.valueOf(digit));
            assertThat(value(rods.nth(LAST))).isEqualTo(digit);
        }
        page.keyboard().press("Delete");
        assertThat(value(rods.nth(LAST))).isZero();
    }

    @Test
    void leftAndRightLeadFromRodToRodAndOnlyOneIsATabStop() {
        Page page = desk.again("/frame", 1024);
        Locator rods = rods(page);
        rods.nth(LAST).focus();

        page.keyboard().press("ArrowLeft");
        page.keyboard().press("7");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("2");

        assertThat(value(rods.nth(LAST - 1))).isEqualTo(7);
        assertThat(value(rods.nth(LAST))).isEqualTo(2);
        assertThat(page.locator("[role=spinbutton][tabindex='0']").count()).isEqualTo(1);
    }

    @Test
    void everyDigitIsReachedByTaps() {
        Page page = desk.again("/frame", 390);
        Locator rod = rods(page).nth(LAST);

        for (int digit = 0; digit <= 9; digit++) {
            page.locator(".frame-clear").click();
            if (digit >= 5) {
                tap(page, LAST, "upper", 0);
            }
            if (digit % 5 > 0) {
                tap(page, LAST, "lower", digit % 5 - 1);
            }
            assertThat(value(rod)).isEqualTo(digit);
        }
        tap(page, LAST, "lower", 0);
        assertThat(value(rod)).as("the first bead takes those below it along").isEqualTo(5);
    }

    @Test
    void everyDigitIsReachedByDrags() {
        Page page = desk.again("/frame", 1024);
        Locator rod = rods(page).nth(LAST);

        for (int digit = 0; digit <= 9; digit++) {
            page.locator(".frame-clear").click();
            if (digit >= 5) {
                drag(page, "upper", 0, 0, 40);
            }
            if (digit % 5 > 0) {
                drag(page, "lower", digit % 5 - 1, 0, -40);
            }
            assertThat(value(rod)).isEqualTo(digit);
        }
        drag(page, "lower", 1, 0, 40);
        drag(page, "upper", 0, 0, -40);
        assertThat(value(rod)).isEqualTo(1);
    }

    @Test
    void aFingerThatSlidesOffTheRodMovesNothing() {
        Page page = desk.again("/frame", 1024);
        Locator rod = rods(page).nth(LAST);

        drag(page, "lower", 2, -150, -40);
        drag(page, "lower", 2, 0, 40);
        drag(page, "lower", 2, 0, -8);

        assertThat(value(rod)).isZero();
        assertThat(beadY(page, LAST, "lower", 2)).isEqualTo(beadY(page, 0, "lower", 2));
    }

    @Test
    void aRodThatIsTouchedTakesTheKeys() {
        Page page = desk.again("/frame", 1024);
        List<Double> at = middle(page, 10, "lower", 1);

        page.mouse().click(at.get(0), at.get(1));
        page.keyboard().press("8");

        assertThat(value(rods(page).nth(10))).isEqualTo(8);
    }

    @Test
    void thumbAndForefingerWorkTogether() {
        Page page = desk.again("/frame", 390);
        page.evaluate(
                """
                ([up, down]) => {
                  const stage = document.querySelector('.frame-stage');
                  stage.setPointerCapture = () => {};
                  const at = (type, pointerId, [clientX, clientY]) => stage.dispatchEvent(
                      new PointerEvent(type, { pointerId, clientX, clientY, bubbles: true }));
                  at('pointerdown', 7, up);
                  at('pointerdown', 8, down);
                  at('pointermove', 7, [up[0], up[1] - 30]);
                  at('pointermove', 8, [down[0], down[1] + 30]);
                  at('pointerup', 7, [up[0], up[1] - 30]);
                  at('pointerup', 8, [down[0], down[1] + 30]);
                }
                """,
                List.of(middle(page, LAST, "lower", 2), middle(page, LAST, "upper", 0)));

        assertThat(value(rods(page).nth(LAST))).as("eight, pinched").isEqualTo(8);
    }

    @Test
    void beadsMoveWhenTheFingerLiftsAndNotBefore() {
        Page page = desk.again("/frame", 1024);
        Locator rod = rods(page).nth(LAST);
        List<Double> at = middle(page, LAST, "upper", 0);

        page.mouse().move(at.get(0), at.get(1));
        page.mouse().down();
        assertThat(value(rod)).isZero();
        page.mouse().up();
        assertThat(value(rod)).isEqualTo(5);
    }

    @ParameterizedTest
    @CsvSource({"modern, 13, 9", "older, 5, 10", "suanpan, 27, 15"})
    void everyKindOfFrameHasItsRodsAndTheirMost(String kind, int rods, int most) {
        Page page = desk.again("/frame?kind=" + kind + "&rods=" + rods, 1024);
        Locator all = rods(page);

        PlaywrightAssertions.assertThat(all).hasCount(rods);
        all.last().focus();
        page.keyboard().press("End");
        assertThat(value(all.last())).isEqualTo(most);
    }

    @Test
    void aLongerFrameKeepsItsBeads() {
        Page page = desk.again("/frame", 1024);
        rods(page).last().focus();
        page.keyboard().press("8");

        page.locator("[name=rods]").fill("21");
        page.locator("[name=rods]").press("Enter");

        PlaywrightAssertions.assertThat(rods(page)).hasCount(21);
        assertThat(value(rods(page).last())).isEqualTo(8);
    }

    @Test
    void assistiveTechnologyIsToldEveryRodAndTheWholeNumber() {
        Page page = desk.again("/frame", 1024);
        rods(page).last().focus();
        page.keyboard().press("7");
        page.keyboard().press("ArrowLeft");
        page.keyboard().press("4");

        PlaywrightAssertions.assertThat(page.getByRole(AriaRole.STATUS))
                .hasText("The frame reads 47.");
        assertThat(page.getByRole(AriaRole.GROUP).first().ariaSnapshot())
                .contains("group \"Soroban, 13 rods\"")
                .contains("spinbutton \"tens\"")
                .contains("spinbutton \"hundreds\"");
        Locator ones = rods(page).last();
        assertThat(ones.getAttribute("aria-valuetext")).startsWith("7");
        assertThat(rods(page).nth(11).getAttribute("aria-valuetext")).startsWith("4");
    }

    @ParameterizedTest
    @CsvSource({"en, 390", "ja, 1920"})
    void thePageIsCleanInEveryWidthAndLanguage(String language, int width) {
        Scene scene = desk.at("/frame", language, width);
        scene.look("free-frame");
    }

    @Test
    void thirteenRodsFitAPhoneWithBeadsThatAFingerHits() {
        Page page = desk.again("/frame", 390);

        assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(390);
        BoundingBox frame = page.locator(".frame-picture").boundingBox();
        assertThat(frame.x).isGreaterThanOrEqualTo(0);
        assertThat(frame.x + frame.width).isLessThanOrEqualTo(390);
        List<Double> first = middle(page, 3, "lower", 0);
        assertThat(middle(page, 4, "lower", 0).get(0) - first.get(0)).isGreaterThanOrEqualTo(24);
        assertThat(middle(page, 3, "lower", 1).get(1) - first.get(1)).isGreaterThanOrEqualTo(24);
    }

    /// Parts of a picture stand out by 3:1 (WCAG 2.2, 1.4.11). Rods do not: many dark lines side by
    /// side on a light ground are a pattern that some eyes cannot bear.
    @Test
    void beadsStandOutFromTheGroundAndRodsDoNot() {
        Page page = desk.again("/frame", 800);

        assertThat(contrast(page, ".bead-body")).isGreaterThanOrEqualTo(3);
        assertThat(contrast(page, ".bead-light")).isGreaterThanOrEqualTo(3);
        assertThat(contrast(page, ".frame-beam")).isGreaterThanOrEqualTo(3);
        assertThat(contrast(page, ".rod-line")).isLessThan(2);
    }

    /// The contrast of a part with the ground of the frame, by the formula of WCAG 2.2.
    private static double contrast(Page page, String part) {
        Object ratio =
                page.evaluate(
                        """
                        part => {
                          const luminance = name => {
                            const fill = getComputedStyle(document.querySelector(name)).fill;
                            const [r, g, b] = fill.match(/\\d+/g).map(value => value / 255).map(
                                c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
                            return 0.2126 * r + 0.7152 * g + 0.0722 * b;
                          };
                          const both = [luminance(part), luminance('.frame-ground')];
                          return (Math.max(...both) + 0.05) / (Math.min(...both) + 0.05);
                        }
                        """,
                        part);
        return ((Number) ratio).doubleValue();
    }

    private static Locator rods(Page page) {
        return page.locator(".frame-stage").getByRole(AriaRole.SPINBUTTON);
    }

    private static int value(Locator rod) {
        return Integer.parseInt(rod.getAttribute("aria-valuenow"));
    }

    private static void tap(Page page, int rod, String deck, int index) {
        List<Double> at = middle(page, rod, deck, index);
        page.touchscreen().tap(at.get(0), at.get(1));
    }

    private static void drag(Page page, String deck, int index, int across, int down) {
        List<Double> at = middle(page, LAST, deck, index);
        page.mouse().move(at.get(0), at.get(1));
        page.mouse().down();
        page.mouse().move(at.get(0) + across / 2.0, at.get(1) + down / 2.0);
        page.mouse().move(at.get(0) + across, at.get(1) + down);
        page.mouse().up();
    }

    private static double beadY(Page page, int rod, String deck, int index) {
        return middle(page, rod, deck, index).get(1);
    }

    /// The middle of a bead in the window. Beads are drawn rod by rod, the upper ones first, each
    /// deck from the beam.
    private static List<Double> middle(Page page, int rod, String deck, int index) {
        int number = rod * 5 + (deck.equals("upper") ? 0 : 1 + index);
        BoundingBox box = page.locator(".frame-picture .bead-body").nth(number).boundingBox();
        return List.of(box.x + box.width / 2, box.y + box.height / 2);
    }

    @Test
    void theAddressChoosesTheFrameAndNonsenseIsTheUsualOne() {
        for (String query : List.of("", "?kind=steam&rods=999&decimals=-4", "?rods=%F0%9F%A7%AE")) {
            Page page = desk.again("/frame" + query, 800);
            assertThat(page.locator("[name=kind]").inputValue()).isEqualTo("modern");
        }
    }
}
