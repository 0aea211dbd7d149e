package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// A teacher's way through the class book: a group, a pupil with all that is written down, and the
/// pupil erased again.
class BookWalkTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @InEveryWindow
    void fromANewGroupToAnErasedPupil(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/book");
        scene.look("book");
        page.locator("form[action='/book/groups'] button").click();
        assertThat(page.locator("#group-note")).not().isEmpty();
        page.locator("#group").fill("水曜 " + language + width);
        page.locator("#group").press("Enter");
        page.waitForURL(Pattern.compile("/book/groups/[A-Z0-9]+$"));

        page.locator("#name").fill("りお <R>");
        page.locator("details.more > summary").click();
        page.locator("#kana").fill("Rio");
        page.locator("#born").fill("２０１７");
        page.locator("#extra").fill("400");
        page.locator("input[name=flashing]").check();
        page.locator("form[action$='/pupils'] button").click();
        assertThat(page.locator("#kana-note")).not().isEmpty();
        assertThat(page.locator("#extra-note")).containsText("300");
        assertThat(page.locator("#name")).hasValue("りお <R>");
        assertThat(page.locator("input[name=flashing]")).isChecked();
        scene.look("pupil-mistaken");
        page.locator("#kana").fill("りお");
        page.locator("#extra").fill("50");
        page.locator("#grade").fill("6級");
        page.locator("form[action$='/pupils'] button").click();
        assertThat(page.locator(".rows tbody tr")).hasCount(1);
        scene.look("group");

        page.locator("a[href$='/attendance']").click();
        page.locator("button[name=late]").click();
        assertThat(page.locator("button[name=late]")).hasAttribute("aria-pressed", "true");
        assertThat(page.locator("button[name=late]")).isFocused();
        page.locator("button[name=late]").press("Enter");
        assertThat(page.locator("button[name=late]")).hasAttribute("aria-pressed", "false");
        page.locator("button[name=rest]").click();
        assertThat(page.locator("button[name=present]")).hasAttribute("aria-pressed", "true");

        page.locator(".above a").nth(1).click();
        page.locator(".rows th a").click();
        page.locator("#note").fill("Counts aloud.\n手の形がよくなった。");
        page.locator("form[action$='/notes'] button").click();
        assertThat(page.locator(".note-words")).containsText("手の形");
        page.locator("#results ~ details > summary").click();
        page.locator("#result").fill("6級");
        page.locator("#points").fill("400");
        page.locator("#most").fill("300");
        page.locator("form[action$='/results'] button").click();
        assertThat(page.locator("#points-note")).not().isEmpty();
        page.locator("#points").fill("230");
        page.locator("form[action$='/results'] button").click();
        assertThat(page.locator("#results ~ .kept")).containsText("230 / 300");
        scene.look("pupil");

        page.locator("a[href$='/copy']").click();
        scene.look("copy");
        APIResponse json = page.request().get(page.url().replace("/copy", ".json"));
        assertThat(json.text()).contains("\"りお <R>\"", "手の形がよくなった。");

        page.goBack();
        page.locator("a[href$='/erase']").click();
        page.locator("#name").fill("Leo");
        page.locator("#name").press("Enter");
        assertThat(page.locator("#name-note")).containsText("りお <R>");
        scene.look("erase");
        page.locator("#name").fill("りお <R>");
        page.locator("#name").press("Enter");
        page.waitForURL(Pattern.compile("/book/groups/[A-Z0-9]+$"));
        page.locator("form[action$='/remove'] button").click();
        page.waitForURL(Pattern.compile("/book$"));

        assertThat(desk.book().pupils().all()).noneMatch(pupil -> pupil.name().startsWith("りお"));
    }

    @ParameterizedTest
    @CsvSource({"en,390", "ja,1024", "en,1920"})
    void theDemoClassShowsItsYear(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/book");
        page.locator("h2 a").nth(1).click();
        scene.look("demo-group");
        page.locator("a[href$='/attendance']").click();
        scene.look("demo-attendance");
        page.goBack();
        page.locator(".rows th a").first().click();
        page.locator(".piece > summary").first().click();
        assertThat(page.locator(".piece .rows").first()).isVisible();
        scene.look("demo-pupil");
        page.locator("a[href$='/edit']").click();
        scene.look("demo-edit");
    }

    @Test
    void theAttendanceIsNotedWithoutScriptsToo() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        page.route("**/*.js", route -> route.abort());
        scene.open("/book");
        page.locator("a[href$='/attendance']").first().click();
        page.locator("button[name=absent]").first().click();
        assertThat(page.locator("button[name=absent]").first())
                .hasAttribute("aria-pressed", "true");
    }
}
