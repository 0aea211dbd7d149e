package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.opening.OpenDesk;

/// A teacher looks how a group gets on, then one pupil, chooses other grades, and prints the
/// family's report.
class ProgressWalkTest {

    @TempDir private static Path folder;

    private static OpenDesk desk;
    private static TeachersBrowser teacher;

    @BeforeAll
    static void open() {
        desk = OpenDesk.open(folder, true, InetAddress.getLoopbackAddress(), 0);
        teacher = new TeachersBrowser();
    }

    @AfterAll
    static void close() {
        teacher.close();
        desk.close();
    }

    @ParameterizedTest
    @CsvSource({"en,390", "en,1024", "en,1920", "ja,390", "ja,1024", "ja,1920"})
    void fromTheGroupToAPupilToTheFamily(String language, int width) {
        try (Scene scene = new Scene(teacher.browser(), desk.url(), language, width)) {
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
    }
}
