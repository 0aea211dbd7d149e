package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.opening.OpenDesk;

/// What a teacher relies on at the desk besides the lesson itself.
class DeskHabitsTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @ParameterizedTest
    @CsvSource({"en,390", "ja,1024"})
    void thePagesBesideTheLessonAreInOrderToo(String language, int width) {
        Scene scene = desk.scene(language, width);
        scene.open("/nowhere");
        scene.look("nowhere");
        scene.open("/mark?sheet=NONE");
        scene.look("mark-which");
        scene.open("/make?kind=quotient&divisor=2&quotient=3");
        scene.look("make-quotients");
        scene.open("/make?kind=root&digits=x");
        scene.look("make-roots");
        scene.open("/make?technique=direct&practise=ten-complement");
        scene.look("make-impossible");
        scene.open("/sheets/" + desk.book().sheets().latest(1).getFirst().sheet().id());
        scene.page().locator(".paper summary").click();
        scene.look("sheet-answers");
        scene.open("/marked/" + desk.book().work().latest(2).getLast().id());
        scene.look("marked-demo");
    }

    @Test
    void aSheetIsMadeAndMarkedWithoutScripts() {
        Page page =
                desk.plain(
                                new Browser.NewContextOptions()
                                        .setLocale("en")
                                        .setJavaScriptEnabled(false))
                        .newPage();
        page.navigate(desk.url() + "make");
        page.locator("#kind-product").check();
        page.locator("#multiplicand").fill("3");
        page.locator("#count").fill("4");
        page.locator("button[data-without-script]").click();
        assertThat(page.locator("#preview .problem")).hasCount(4);

        page.locator("button[formaction='/sheets']").click();
        page.locator("a[href^='/mark/']").click();
        page.locator("#a1").fill("1");
        page.locator(".answers-form > .actions button").click();
        assertThat(page.locator(".marked > .is-wrong")).hasCount(1);
        assertThat(page.locator(".marked > .is-empty")).hasCount(3);
    }

    @Test
    void thePreviewFollowsTheWishAndTellsWhatCannotBe() {
        Page page = english();
        page.navigate(desk.url() + "make");
        page.locator("#rows").fill("3");
        assertThat(page.locator("#preview .rows").first().locator("li")).hasCount(3);
        assertThat(page.locator("#rows")).isFocused();

        page.locator("#rows").fill("three");
        assertThat(page.locator("#rows-note")).containsText("whole number from 2 to 30");
        assertThat(page.locator("#rows")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#preview .problem")).hasCount(0);

        page.locator("#rows").fill("4");
        assertThat(page.locator("#preview .problem")).hasCount(10);
        assertThat(page.locator("#rows-note")).isEmpty();
        assertThat(page.url()).contains("rows=4");
    }

    @Test
    void makingOthersChangesTheProblemsAndKeepsTheWish() {
        Page page = english();
        page.navigate(desk.url() + "make");
        page.locator("#count").fill("7");
        assertThat(page.locator("#preview .problem")).hasCount(7);
        String before = page.locator("#preview").innerText();

        page.locator("button[name=other]").click();
        assertThat(page.locator("#preview")).not().hasText(before);
        assertThat(page.locator("#preview .problem")).hasCount(7);
        assertThat(page.locator("#count")).hasValue("7");
    }

    @Test
    void anotherLanguageKeepsTheWishAndIsRemembered() {
        Page page = english();
        page.navigate(desk.url() + "make");
        page.locator("#count").fill("7");
        assertThat(page.locator("#preview .problem")).hasCount(7);

        page.locator(".languages button[value=ja]").click();
        assertThat(page.locator("html")).hasAttribute("lang", "ja");
        assertThat(page.locator("#count")).hasValue("7");
        page.navigate(desk.url());
        assertThat(page.locator("h1")).hasText("先生の机");
    }

    @Test
    void theDemoClassGoesWithOneClick() {
        OpenDesk other = desk.another();
        Page page = english();
        page.navigate(other.url());
        assertThat(page.locator(".demo").first()).isVisible();
        page.locator("details.remove summary").click();
        page.locator("details.remove button").click();
        assertThat(page.locator(".demo")).hasCount(0);
        assertThat(page.locator(".pupils")).hasCount(0);
        assertThat(other.book().pupils().all()).isEmpty();
    }

    private static Page english() {
        return desk.plain(new Browser.NewContextOptions().setLocale("en")).newPage();
    }
}
