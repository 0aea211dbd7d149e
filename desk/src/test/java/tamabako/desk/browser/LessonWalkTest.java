package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.opening.OpenDesk;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Words;

/// A lesson from the wish to the slip: make a sheet, print it, mark a pupil's answers, look at the
/// slip, work the sum.
class LessonWalkTest {

    @TempDir private static Path folder;

    private static OpenDesk desk;
    private static TeachersBrowser teacher;

    @BeforeAll
    static void open() {
        Words words = Languages.of(List.of()).english();
        desk = OpenDesk.open(folder, false, words, InetAddress.getLoopbackAddress(), 0);
        teacher = new TeachersBrowser();
    }

    @AfterAll
    static void close() {
        teacher.close();
        desk.close();
    }

    @ParameterizedTest
    @CsvSource({"en,390", "en,1024", "en,1920", "ja,390", "ja,1024", "ja,1920"})
    void aLessonCanBeWalkedFromTheWishToTheSlip(String language, int width) {
        Words words = Languages.of(List.of()).choose(Optional.of(language), Optional.empty());
        try (Scene scene = new Scene(teacher.browser(), desk.url(), language, width)) {
            Page page = scene.page();
            scene.open("/");
            assertThat(page.locator("html")).hasAttribute("lang", language);
            scene.look("desk");

            page.getByRole(AriaRole.NAVIGATION).getByText(words.say("station.make")).click();
            makeAWish(page, words);
            scene.look("make");
            page.getByText(words.say("make.keep"), new Page.GetByTextOptions().setExact(true))
                    .click();

            assertThat(page.locator(".problems > li")).hasCount(6);
            scene.look("sheet");
            assertPrints(page);

            page.getByText(words.say("sheet.mark")).click();
            scene.look("mark");
            answer(page);
            page.getByText(words.say("mark.mark-now"), new Page.GetByTextOptions().setExact(true))
                    .click();
            scene.look("marked");
        }
    }

    private static void makeAWish(Page page, Words words) {
        page.getByLabel(words.say("make.rows")).fill("4");
        page.getByLabel(words.say("make.minus")).fill("1");
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
        assertThat(new String(pdf.body(), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
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
