package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.problems.Problem;
import tamabako.problems.marking.Written;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;
import tamabako.records.Work;

/// A pile of paper: handed out, entered line by line with the keyboard alone, reloaded in the
/// middle, corrected later.
class EntryWalkTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    /// A sheet of three sums of the teacher's own, made through the desk.
    private static KeptSheet makeSheet(Scene scene) {
        Page page = scene.page();
        scene.open("/make?kind=product&multiplicand=2&multiplier=1&count=3&seed=5");
        page.locator("button[formaction='/sheets']").click();
        page.waitForURL(Pattern.compile("/sheets/[A-Z0-9-]+$"));
        String id = page.url().replaceFirst(".*/", "");
        return desk.book().sheets().find(id).orElseThrow();
    }

    private static List<String> answers(KeptSheet kept) {
        return kept.sheet().problems().stream()
                .map((Problem problem) -> Written.of(problem).toString())
                .toList();
    }

    @InEveryWindow
    void aPileIsEnteredWithTheKeyboardAlone(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        KeptSheet kept = makeSheet(scene);
        List<String> right = answers(kept);
        String id = kept.sheet().id();
        page.locator("#to-group").selectOption(new SelectOption().setLabel("Tuesday juniors"));
        page.locator("form[action='/handouts'] button").click();
        assertThat(page.locator("form[action^='/handouts/']")).hasCount(1);
        scene.look("handed-out");

        scene.open("/entry");
        page.locator("#number").fill("XXXX-XXXX");
        page.locator("#number").press("Enter");
        assertThat(page.locator("#number-note")).not().isEmpty();
        scene.look("choose-mistaken");
        page.locator("#number").fill(id.toLowerCase(Locale.ROOT).replace("-", " "));
        page.locator("#group").selectOption(new SelectOption().setLabel("Tuesday juniors"));
        page.locator("#number").press("Enter");
        page.waitForURL(Pattern.compile("/entry/" + id + "\\?group="));

        Locator first = page.locator(".line").first();
        assertThat(first.locator("input[name=a1]")).isFocused();
        page.keyboard().type(right.get(0));
        page.keyboard().press("Enter");
        assertThat(first.locator("input[name=a2]")).isFocused();
        assertThat(first.locator("li").nth(0).locator(".sign-right")).isVisible();
        page.keyboard().type("1");
        page.keyboard().press("Enter");
        assertThat(first.locator("li").nth(1).locator(".sign-wrong")).isVisible();
        page.keyboard().type(right.get(2).substring(0, 1));
        page.reload();
        first = page.locator(".line").first();
        assertThat(first.locator("input[name=a2]")).hasValue("1");
        assertThat(first.locator("input[name=a3]")).hasValue(right.get(2).substring(0, 1));
        scene.look("draft");

        first.locator("input[name=a3]").fill(right.get(2));
        page.keyboard().press("Enter");
        assertThat(first.locator("input[name=took]")).isFocused();
        page.keyboard().type("soon");
        page.keyboard().press("Enter");
        assertThat(first.locator("[data-fault]")).containsText("soon");
        first.locator("input[name=took]").fill("1:05");
        first.locator("input[name=took]").press("Enter");

        assertThat(first.locator(".score")).containsText("2");
        Locator second = page.locator(".line").nth(1);
        assertThat(second.locator("input[name=a1]")).isFocused();
        for (String answer : right) {
            page.keyboard().type(answer);
            page.keyboard().press("Enter");
        }
        page.keyboard().press("Enter");
        assertThat(page.locator(".line").nth(2).locator("input[name=a1]")).isFocused();
        page.keyboard().press("ArrowDown");
        assertThat(page.locator(".line").nth(3).locator("input[name=a1]")).isFocused();
        page.keyboard().press("ArrowUp");
        assertThat(page.locator(".line").nth(2).locator("input[name=a1]")).isFocused();
        scene.look("grid");

        first.locator("a[href*='correct=']").click();
        first = page.locator(".line").first();
        assertThat(first.locator("input[name=took]")).hasValue("1:05");
        first.locator("input[name=a2]").fill(right.get(1));
        first.locator("input[name=took]").press("Enter");
        assertThat(first.locator(".score")).containsText("3");
        assertThat(first.locator("form")).hasCount(0);

        List<Work> work = desk.book().work().ofSheet(id);
        assertThat(work).hasSize(2).allMatch(one -> one.right() == 3);
        assertThat(work.getFirst().took()).hasValue(Duration.ofSeconds(65));
        assertThat(desk.book().drafts().ofSheet(id)).isEmpty();
        Pupil pupil =
                desk.book().pupils().find(work.getFirst().pupilId().orElseThrow()).orElseThrow();
        scene.open("/book/pupils/" + pupil.id());
        page.locator(".piece > summary").first().click();
        scene.look("in-the-book");
    }

    @ParameterizedTest
    @CsvSource({"en,1024", "ja,390", "ja,1920"})
    void aFormOfAPaperIsEnteredSectionBySection(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/papers?ladder=abacus-one-sheet");
        page.locator("input[name=grade]").last().check();
        page.locator("#forms").fill("1");
        page.locator("form[action='/papers'][method=post] button").click();
        page.waitForURL(Pattern.compile("/papers/[A-Z0-9-]+$"));
        page.locator(".entries a[href^='/entry/']").click();
        page.locator(".entries a").last().click();
        Locator line = page.locator(".line").first();
        assertThat(line.locator("h3")).not().hasCount(0);
        assertThat(line.locator("input[name=a1]")).isFocused();
        page.keyboard().type("1");
        page.keyboard().press("Enter");
        assertThat(line.locator("input[name=a2]")).isFocused();
        assertThat(line.locator(".sign").first()).isVisible();
        page.locator(".hand-out button").click();
        assertThat(page.locator(".hand-out button")).hasCount(0);
        assertThat(line.locator("input[name=a1]")).hasValue("1");
        scene.look("paper");
    }

    @Test
    void withoutScriptsEachLineIsKeptByItsButton() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        KeptSheet kept = makeSheet(scene);
        page.route("**/*.js", route -> route.abort());
        scene.open("/entry/" + kept.sheet().id());
        page.locator(".entries a").last().click();
        Locator line = page.locator(".line").nth(2);
        line.locator("input[name=a1]").fill(answers(kept).getFirst());
        line.locator("button").click();
        assertThat(page.locator(".line").nth(2).locator(".score")).containsText("1 of 3");
        assertThat(desk.book().work().ofSheet(kept.sheet().id())).hasSize(1);
    }

    @Test
    void whileTheDeskIsAwayWhatIsTypedStays() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        KeptSheet kept = makeSheet(scene);
        scene.open("/entry/" + kept.sheet().id());
        page.locator(".entries a").last().click();
        Locator line = page.locator(".line").first();
        assertThat(line.locator("input[name=a1]")).isFocused();
        page.context().setOffline(true);
        line.locator("input[name=a1]").fill("7");
        line.locator("input[name=took]").press("Enter");
        assertThat(line.locator("[data-fault]")).containsText("What you typed still stands");
        assertThat(line.locator("input[name=a1]")).hasValue("7");
        page.context().setOffline(false);
        line.locator("input[name=took]").press("Enter");
        assertThat(page.locator(".line").first().locator(".score")).containsText("0 of 3");
        assertThat(page.getByRole(AriaRole.STATUS)).containsText("0 of 3");
    }
}
