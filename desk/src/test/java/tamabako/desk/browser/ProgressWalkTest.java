package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.regex.Pattern;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A teacher looks how a group gets on, then one pupil, chooses other grades, and prints the
/// family's report.
class ProgressWalkTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @InEveryWindow
    void fromTheGroupToAPupilToTheFamily(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/book");
        page.locator(".shelves section", new Page.LocatorOptions().setHasText("Goro"))
                .locator("a[href$='/progress']")
                .click();
        page.waitForURL(Pattern.compile("/book/groups/[A-Z0-9]+/progress$"));
        assertThat(page.locator(".standing tbody tr")).hasCount(8);
        scene.look("group");

        page.locator(".standing a", new Page.LocatorOptions().setHasText("Goro")).click();
        assertThat(page.locator("h1")).containsText("Goro");
        Locator digits = page.locator("table.digits");
        assertThat(digits).hasCount(2);
        assertThat(digits.first().locator("tbody td")).hasCount(90);
        assertThat(page.locator("#slips")).isVisible();
        scene.look("pupil");

        page.locator("#ladder").selectOption("first-steps");
        page.locator("form[action='/progress/ladder'] button").click();
        assertThat(page.locator("#ladder")).hasValue("first-steps");
        page.locator("#ladder").selectOption("abacus-by-sections");
        page.locator("form[action='/progress/ladder'] button").click();
        assertThat(page.locator("#ladder")).hasValue("abacus-by-sections");

        page.locator("a[href$='/report']").click();
        assertThat(page.locator(".report h2").first()).isVisible();
        scene.look("report");
    }

    @ParameterizedTest
    @CsvSource({"en,1024", "ja,390"})
    void nextPracticeIsPlannedKeptAndHandedOut(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/book");
        page.locator(".names a", new Page.LocatorOptions().setHasText("Farah")).click();
        page.locator("a[href$='/progress']").click();
        page.locator("a[href$='/practice']").click();
        assertThat(page.locator(".problem")).hasCount(20);
        page.locator("#days").fill("5000");
        page.locator(".asking button.second").click();
        assertThat(page.locator("#days-note")).not().isEmpty();
        page.locator("#days").fill("30");
        page.locator("#count").fill("12");
        page.locator(".asking button.second").click();
        assertThat(page.locator(".problem")).hasCount(12);
        scene.look("practice");
        String first = page.locator(".problem").first().innerText();
        page.locator(".asking button[name=seed]").click();
        page.waitForURL(Pattern.compile("/sheets/[A-Z0-9-]+$"));
        assertThat(page.locator("h1")).containsText("Farah");
        assertThat(page.locator(".problem").first())
                .hasText(first, new LocatorAssertions.HasTextOptions().setUseInnerText(true));
        assertThat(page.locator("main")).containsText("Farah");

        scene.open("/book");
        page.locator(".shelves section", new Page.LocatorOptions().setHasText("Lina"))
                .locator("a[href$='/progress']")
                .click();
        page.locator("a[href$='/practice']").click();
        assertThat(page.locator(".plans section")).hasCount(6);
        scene.look("practice-group");
        page.locator(".asking button[name=seed]").click();
        assertThat(page.locator(".made .names a")).hasCount(6);
        scene.look("practice-made");
        APIResponse pdf =
                page.request()
                        .get(
                                desk.url().replaceAll("/$", "")
                                        + page.locator(".made a.button")
                                                .first()
                                                .getAttribute("href"));
        assertThat(new String(pdf.body(), 0, 5, ISO_8859_1)).isEqualTo("%PDF-");
    }
}
