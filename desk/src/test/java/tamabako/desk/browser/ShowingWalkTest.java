package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.records.Preferences;
import tamabako.records.Pupil;

/// Planning a showing, the caution before the first one, a run on the stage, and its answer.
class ShowingWalkTest {

    /// Three numbers at two a second.
    private static final String STAGE =
            "/showing/stage?digits=1&rows=3&minus=0&seconds=0.5&per=each&look=figures&size=fit"
                    + "&place=here&seed=77";

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @Test
    void nothingIsShownBeforeTheCautionIsRead() {
        Scene scene = desk.scene(desk.another(), "en", 1024);
        Page page = scene.page();
        scene.open(STAGE);
        assertThat(page.locator("#stage")).hasCount(0);
        assertThat(page.locator("#caution")).isVisible();
        assertThat(page.locator("form.plan button").first()).isDisabled();
        scene.look("showing-caution");
        page.locator("form[action='/showing/caution'] button").click();
        assertThat(page.locator("#caution")).hasCount(0);
        assertThat(page.locator("form.plan button").first()).isEnabled();
        assertThat(page.locator("#rows")).hasValue("3");
    }

    @InEveryWindow
    void aShowingFromThePlanToTheAnswer(String language, int width) {
        desk.book().settings().keep("showing.caution-read", "yes");
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open(
                "/showing?rows=3&seconds=0.5&per=each&digits=2&look=figures&size=fit&place=here");
        scene.look("showing-plan");
        page.locator("form.plan[action='/showing/stage'] button").click();
        page.waitForURL(Pattern.compile(".*seed=\\d+.*"));
        scene.look("showing-stage");

        page.locator("#start").click();
        assertThat(page.locator("#after"))
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(20_000));
        assertThat(page.locator("#answer")).isFocused();
        page.locator("#answer").press("Enter");
        assertThat(page.locator("#verdict")).not().isEmpty();
        assertThat(page.locator("#rows li")).hasCount(3);
        page.locator(".times summary").click();
        assertThat(page.locator("#times tr")).hasCount(3);
        assertThat(page.locator("#account p").first()).not().isEmpty();
        scene.look("showing-answer");
    }

    @Test
    void theAnswerIsMarkedByTheDesk() {
        desk.book().settings().keep("showing.caution-read", "yes");
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open(STAGE);
        page.locator("#start").click();
        assertThat(page.locator("#after"))
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(20_000));
        int sum = 0;
        page.locator("#answer").fill("0");
        page.locator("#answer").press("Enter");
        assertThat(page.locator("#verdict")).containsText("Not this time");
        for (String row : page.locator("#rows li").allInnerTexts()) {
            sum += Integer.parseInt(row.strip());
        }
        page.locator("#answer").fill(Integer.toString(sum));
        page.locator("#answer").press("Enter");
        assertThat(page.locator("#verdict")).hasText("Right: " + sum);
        page.locator("#answer").fill("about four");
        page.locator("#answer").press("Enter");
        assertThat(page.locator("#verdict")).not().containsText("Right");
    }

    /// WCAG 2.2: whoever is better off without the showing gets the same numbers another way.
    @Test
    void theSameNumbersCanBeSpokenInstead() {
        desk.book().settings().keep("showing.caution-read", "yes");
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open(STAGE.replace("digits=1", "digits=2"));
        page.getByText("Speak them instead").click();
        page.waitForURL(Pattern.compile(".*/call\\?.*"));
        assertThat(page.locator("[name=least]")).hasValue("2");
        assertThat(page.locator("[name=rows]")).hasValue("3");
        assertThat(page.locator("[name=pace]")).hasValue("0.5");
        assertThat(page.locator("[name=method][value=mental]")).isChecked();
        assertThat(page.locator(".wrong-field:not(:empty)")).hasCount(0);
    }

    /// Nothing on the page says why this pupil's showing is a calm one.
    @Test
    void aPupilWhoIsNotToSeeFlashesGetsTheCalmPace() {
        desk.book().settings().keep("showing.caution-read", "yes");
        Pupil someone = desk.book().pupils().all().getFirst();
        desk.book()
                .pupils()
                .keep(
                        new Pupil(
                                someone.id(),
                                someone.groupId(),
                                someone.name(),
                                someone.language(),
                                someone.about(),
                                new Preferences(true, 0, 100),
                                someone.demo()));
        Scene scene = desk.scene("en", 1024);
        scene.open(STAGE + "&pupil=" + someone.id());
        assertThat(scene.page().locator("#stage")).hasAttribute("data-period", "1000.0");
        assertThat(scene.page().locator("main")).not().containsText("flash");
    }

    @Test
    void escapeAndAnotherWindowSizeStopTheRun() {
        desk.book().settings().keep("showing.caution-read", "yes");
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open(STAGE);
        Locator layers = page.locator(".shown-number");
        page.locator("#start").click();
        layers.first()
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
        page.keyboard().press("Escape");
        assertThat(page.locator("#showing-status")).containsText("Stopped");
        assertThat(page.locator("#after")).isHidden();

        page.locator("#start").click();
        layers.first()
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
        page.setViewportSize(900, 600);
        assertThat(page.locator("#showing-status")).containsText("changed its size");
        assertThat(page.locator("#after")).isHidden();
    }

    @Test
    void whatIsUnsafeOrWrongIsRefusedWithAWayOn() {
        desk.book().settings().keep("showing.caution-read", "yes");
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open(STAGE.replace("size=fit", "size=any").replace("seconds=0.5", "seconds=0.2"));
        assertThat(page.locator("#size-note")).containsText("0.36 seconds");
        scene.open(STAGE.replace("rows=3", "rows=99").replace("seconds=0.5", "seconds=ten"));
        assertThat(page.locator("#rows-note")).containsText("2 to 30");
        assertThat(page.locator("#seconds-note")).containsText("0.1 to 20");
        scene.open(STAGE.replace("place=here", "place=classroom"));
        assertThat(page.locator("#seats")).isVisible();
        assertThat(page.locator("#stage")).hasCount(0);
        page.locator("#width").fill("200");
        page.locator("#nearest").fill("150");
        page.locator("form[action='/showing/seats'] button").click();
        assertThat(page.locator("body")).containsText("200 cm wide");
        scene.open(STAGE.replace("place=here", "place=classroom"));
        assertThat(page.locator("#stage")).hasAttribute("data-nearest", "150");
        scene.open(STAGE + "&sheet=NOSUCH");
        assertThat(page.locator("[role=alert]")).containsText("NOSUCH");
    }
}
