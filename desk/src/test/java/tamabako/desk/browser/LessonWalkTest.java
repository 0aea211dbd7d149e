package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.extension.RegisterExtension;

/// A lesson from the wish to the slip: make a sheet, print it, mark a pupil's answers, look at the
/// slip, work the sum.
class LessonWalkTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @InEveryWindow
    void aLessonCanBeWalkedFromTheWishToTheSlip(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/");
        assertThat(page.locator("html")).hasAttribute("lang", language);
        scene.look("desk");
        if (Boolean.getBoolean("tamabako.picture") && scene.isNamed("en-1024")) {
            scene.paint(Path.of("..", "docs", "desk.png"));
        }

        scene.goByMenu("a[href='/make']");
        makeAWish(page);
        scene.look("make");
        page.locator("button[formaction='/sheets']").click();

        assertThat(page.locator(".problems > li")).hasCount(6);
        scene.look("sheet");
        assertPrints(page);

        page.locator("a[href^='/mark/']").click();
        scene.look("mark");
        answer(page);
        scene.look("marked");
        assertMarked(page);

        page.locator("a[href^='/work']").nth(1).click();
        assertThat(page.locator("h1")).isVisible();
        scene.look("work");
    }

    private static void makeAWish(Page page) {
        page.locator("#rows").fill("4");
        page.locator("#minus").fill("1");
        page.locator("#count").fill("6");
        page.locator("input[name=practise][value=ten-complement]").check();
        assertThat(page.locator("#preview .problem")).hasCount(6);
        assertThat(page.locator("#preview .rows").first().locator("li")).hasCount(4);
    }

    private static void assertPrints(Page page) {
        String address = page.url() + ".pdf?part=both&language=ja&size=large";
        APIResponse pdf = page.request().get(address);
        assertThat(pdf.status()).isEqualTo(200);
        assertThat(pdf.headers()).containsEntry("content-type", "application/pdf");
        assertThat(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    private static void answer(Page page) {
        List<String> lines = page.locator(".typed .line").allInnerTexts();
        Locator first = page.locator("#a1");
        first.fill(String.valueOf(total(lines.get(0))));
        first.press("Enter");
        assertThat(page.locator("#a2")).isFocused();
        page.locator("#a2").fill(String.valueOf(total(lines.get(1)) - 100));
        page.locator("#a3").fill(String.valueOf(total(lines.get(2)) + 1));
        page.locator("#a4").fill("0" + total(lines.get(3)));
        page.locator("#a5").fill("7?");
        page.locator(".answers-form > .actions button").click();
    }

    /// Right, 100 too small, 1 too large, a zero in front, no number, and one left out.
    private static void assertMarked(Page page) {
        assertThat(page.locator(".marked > li")).hasCount(6);
        List<String> classes = List.of("right", "wrong", "wrong", "wrong-form", "unclear", "empty");
        for (int i = 0; i < classes.size(); i++) {
            assertThat(page.locator(".marked > li").nth(i))
                    .hasClass(Pattern.compile("is-" + classes.get(i) + "$"));
        }
        assertThat(page.locator(".marked > .is-wrong .headline")).hasCount(2);
    }

    /// Adds a line such as `54 − 29 + 38`, apart from the program's own arithmetic.
    private static int total(String line) {
        int total = 0;
        String signs = line.replace("− ", "-").replace("+ ", "").replace(",", "");
        for (String number : signs.strip().split("\\s+", -1)) {
            total += Integer.parseInt(number);
        }
        return total;
    }
}
