package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A working played on the drawn frame: 54 - 29 + 38, two steps that set 54 and six that work it.
class PlayerTest {

    private static final String SUM = "/work?sum=54-29%2B38";

    /// After each step, the first two set 54. From the rule of K. Tochio, Computation on the
    /// Soroban (1912): borrow, then add the complement; take the complement off, then carry.
    private static final List<String> STATES =
            List.of("000", "050", "054", "034", "024", "025", "055", "053", "063");

    @RegisterExtension static final WorkDesk desk = new WorkDesk();

    @Test
    void theKeysGoThroughEveryStateForthAndBack() {
        Scene scene = desk.at(SUM, "en", 1024);
        Page page = scene.page();
        page.locator(".frame-stage").focus();
        for (int step = 0; step < STATES.size(); step++) {
            assertShows(page, step);
            page.keyboard().press("ArrowRight");
        }
        assertShows(page, 8);
        page.keyboard().press("ArrowLeft");
        assertShows(page, 7);
        page.keyboard().press("Home");
        assertShows(page, 0);
        page.keyboard().press("End");
        assertShows(page, 8);
        assertThat(page.locator(".now-answer")).hasText("The answer is 63.");
    }

    @Test
    void keysActOnlyWhileThePlayerHasTheFocus() {
        Scene scene = desk.at(SUM, "en", 1024);
        Page page = scene.page();
        page.locator("#sum").focus();
        page.keyboard().press("End");
        page.keyboard().press("ArrowRight");
        assertShows(page, 0);
        page.locator("[name=speed]").focus();
        page.keyboard().press("ArrowRight");
        assertShows(page, 0);
        page.getByLabel("One step on").focus();
        page.keyboard().press("Space");
        assertShows(page, 1);
        assertThat(page.locator("[data-act=play]")).hasAttribute("aria-label", "Play");
    }

    @Test
    void theButtonsDoWhatTheySay() {
        Scene scene = desk.at(SUM, "en", 390);
        Page page = scene.page();
        page.getByLabel("One step on").tap();
        page.getByLabel("One step on").tap();
        page.getByLabel("One step on").tap();
        assertShows(page, 3);
        page.getByLabel("One step back").tap();
        assertShows(page, 2);
        page.getByLabel("To the end").tap();
        assertShows(page, 8);
        page.getByLabel("To the start").tap();
        assertShows(page, 0);
    }

    @Test
    void aStepOfTheListIsJumpedTo() {
        Scene scene = desk.at(SUM, "en", 1024);
        Page page = scene.page();
        page.locator("#step-6 a").click();
        assertShows(page, 6);
        assertThat(page.locator("#step-6")).hasAttribute("aria-current", "step");
        assertThat(page.locator(".now-say")).containsText("Row 3.");
        assertThat(page.locator(".now-brief")).hasText("+3 = +5 −2");
        assertThat(page.locator(".now-label")).hasText("row 3");
    }

    @Test
    void aJumpNamesTheStepInTheAddressAndLeavesThePageWhereItIs() {
        Scene scene = desk.at(SUM, "en", 390);
        Page page = scene.page();
        page.locator("#step-8").scrollIntoViewIfNeeded();
        Object before = page.evaluate("scrollY");
        page.locator("#step-8 a").tap();
        assertShows(page, 8);
        assertThat(page.url()).endsWith("#step-8");
        assertThat(page.evaluate("scrollY")).isEqualTo(before);
    }

    @Test
    void theLinkOfAStepOpensThere() {
        Scene scene = desk.at(SUM + "#step-5", "en", 1024);
        assertShows(scene.page(), 5);
    }

    @Test
    void playRunsToTheEndAndPauses() {
        Scene scene = desk.at(SUM, "en", 1024);
        Page page = scene.page();
        page.clock().install();
        page.locator(".frame-stage").focus();
        page.keyboard().press("Space");
        assertThat(page.locator("[data-act=play]")).hasAttribute("aria-label", "Pause");
        assertThat(page.locator(".now-say")).hasAttribute("aria-live", "off");
        assertShows(page, 1);
        page.clock().runFor(3_600);
        assertShows(page, 2);
        page.keyboard().press("Space");
        page.clock().runFor(20_000);
        assertShows(page, 2);
        page.keyboard().press("Space");
        page.clock().runFor(60_000);
        assertShows(page, 8);
        assertThat(page.locator("[data-act=play]")).hasAttribute("aria-label", "Play");
        assertThat(page.locator(".now-say")).hasAttribute("aria-live", "polite");
    }

    @Test
    void aPauseInTheMiddleOfAStepLeavesTheStepDone() {
        // 8 − 7: two lower beads down, and after that the five up.
        Scene scene = desk.at("/work?sum=8-7&rods=3#step-1", "en", 1024);
        Page page = scene.page();
        page.locator("[name=speed]").selectOption("6000");
        page.locator(".frame-stage").focus();
        page.keyboard().press("Space");
        assertThat(page.locator(".rod-count").last().textContent()).isEqualTo("6");
        page.keyboard().press("Space");
        assertThat(page.locator(".rod-count").last().textContent()).isEqualTo("1");
    }

    @Test
    void theSettingCanBeLeftOut() {
        Scene scene = desk.at(SUM, "en", 1024);
        Page page = scene.page();
        page.locator("[name=setting]").uncheck();
        assertShows(page, 2);
        assertThat(page.locator(".now-count")).hasText("Step 0 of 6");
        assertThat(page.locator(".now-say")).hasText("The numbers are set.");
        page.getByLabel("One step back").click();
        assertShows(page, 2);
    }

    @Test
    void whatHasJustMovedIsMarkedOnTheFrameAndInTheSum() {
        Scene scene = desk.at(SUM + "#step-3", "en", 1024);
        Page page = scene.page();
        // −2 on the tens: three lower beads up, the five up.
        assertThat(page.locator(".bead.moved")).hasCount(4);
        assertThat(page.locator(".bead.moved.downward")).hasCount(0);
        assertThat(page.locator(".sum-line.now")).hasText("−29");
        assertThat(page.locator(".sum-figure.now")).hasText("2");
        page.getByLabel("To the start").click();
        assertThat(page.locator(".now[data-part]")).hasCount(0);
        assertThat(page.locator(".bead.moved")).hasCount(0);
    }

    @ParameterizedTest
    @CsvSource({
        "306*4, 400306000, 400012240, 9",
        "1225/35, 3500001225, 3500035000, 10",
        "9731%2B269, 09731, 10000, 5",
    })
    void everyKindOfSumEndsWhereItsHandbookEnds(String sum, String set, String end, int rods) {
        Scene scene = desk.at("/work?sum=" + sum, "ja", 390);
        Page page = scene.page();
        assertThat(page.locator(".rod-count")).hasCount(rods);
        page.locator("[data-act=end]").tap();
        assertThat(page.locator(".frame-picture")).containsText(end);
        page.locator("[name=setting]").uncheck();
        page.locator("[data-act=start]").tap();
        assertThat(page.locator(".frame-picture")).containsText(set);
    }

    @ParameterizedTest
    @CsvSource({
        "54-29%2B38#step-7, en, 390",
        "1225/35#step-12, en, 1920",
        "306*42#step-12, ja, 1024",
        "1234567890123456789012345678.5-987654321098765432109876543.25#step-40, en, 390",
        "1234567890123456789012345678.5-987654321098765432109876543.25#step-40, ja, 1024",
        "%E2%88%9B59319#step-25, ja, 1920",
    })
    void thePageIsCleanInEveryWidthAndLanguage(String sum, String language, int width) {
        Scene scene = desk.at("/work?sum=" + sum, language, width);
        scene.look("work");
    }

    private static void assertShows(Page page, int step) {
        Locator counts = page.locator(".frame-picture .rod-count");
        assertThat(String.join("", counts.allTextContents())).isEqualTo(STATES.get(step));
    }
}
