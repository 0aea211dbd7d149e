package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.extension.RegisterExtension;

/// A teacher comes back from an exam, writes down what came of it with the keyboard only, and looks
/// how well the forecasts held.
class ExamWalkTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @InEveryWindow
    void outcomesOfAGroupAreTypedAndHeldAgainstTheForecasts(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/book");
        page.locator("h2 a[href*='/book/groups/'], .shelves a[href*='/book/groups/']")
                .filter(new Locator.FilterOptions().setHasText("Tuesday"))
                .first()
                .click();
        page.locator("a[href$='/exams']").click();
        assertThat(page.locator(".past li")).not().hasCount(0);
        // Each window has a day of its own.
        int day = 10 + width % 11 + (language.equals("ja") ? 10 : 0);
        page.locator("#day").fill("2026-03-" + day);
        page.locator("#exam").selectOption("abacus-by-sections/9");
        page.locator(".choose button").click();
        assertThat(page.locator(".exam-lines > li")).hasCount(8);

        Locator first = page.locator(".exam-lines select").first();
        assertThat(first).isFocused();
        first.selectOption("passed");
        page.keyboard().press("Enter");
        Locator points = page.locator(".exam-lines input").first();
        assertThat(points).isFocused();
        page.keyboard().type("999");
        page.keyboard().press("ArrowDown");
        page.keyboard().type("20");
        page.keyboard().press("ArrowUp");
        assertThat(points).isFocused();
        page.locator(".exam-lines select").nth(1).selectOption("not-passed");
        page.locator(".exam-lines select").nth(2).selectOption("not-sat");
        page.locator("form .actions button").click();
        assertThat(page.locator(".exam-lines .wrong-field")).not().isEmpty();
        assertThat(points).isFocused();
        scene.look("exam-fault");
        points.fill("80");
        page.locator("form .actions button").click();
        assertThat(page.locator("#exam-sum")).containsText("1");
        assertThat(points).hasValue("80");
        scene.look("exam-kept");

        scene.open("/book");
        page.locator(".shelves section", new Page.LocatorOptions().setHasText("Goro"))
                .locator("a[href$='/progress']")
                .click();
        page.waitForURL(Pattern.compile("/book/groups/[A-Z0-9]+/progress$"));
        assertThat(page.locator("#held")).isVisible();
        assertThat(page.locator(".held li")).not().hasCount(0);
        scene.look("group-held");
        page.locator(".standing a", new Page.LocatorOptions().setHasText("Goro")).click();
        assertThat(page.locator("section[aria-labelledby=exams] li")).not().hasCount(0);
        scene.look("pupil-exams");
        page.locator("section[aria-labelledby=exams] a").click();
        assertThat(page.locator("#exam")).isVisible();
    }
}
