package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/// The caller's page, from the plan to the answer.
class CallWalkTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @InEveryWindow
    void aCallIsPlannedCalledAndAnswered(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/call");
        scene.look("call-plan");
        page.locator("#pacing").selectOption("s");
        page.locator("#pace").fill("1.5");
        page.locator("#rows").fill("3");
        page.locator("#most").fill("2");
        page.locator("#minus").fill("1");
        page.locator("input[name=round][value=best]").check();
        page.locator(".call-plan .actions button").click();
        assertThat(page.locator(".call-start")).isEnabled();
        page.locator(".call-start").click();
        assertThat(page.locator(".call-now")).containsText("2");
        scene.look("calling");
        assertThat(page.locator(".call-state"))
                .hasText(language.equals("ja") ? "最後の口まで読みました" : "That was the last row");
        assertThat(page.locator(".call-answer")).isHidden();
        page.locator(".call-show").click();
        note(page, 12);
        note(page, 9);
        note(page, 8);
        assertThat(page.locator(".call-tally li")).hasCount(3);
        assertThat(page.locator(".call-tally li").nth(1)).containsText("12");
        note(page, 10);
        assertThat(page.locator("#hands-note")).containsText("8");
        scene.look("answered");
        page.locator(".call-next").click();
        assertThat(page.locator(".call-answer")).isHidden();
        page.locator(".call-prompter").check();
        page.locator(".call-start").click();
        assertThat(page.locator(".call-now.is-prompter")).isVisible();
        page.waitForTimeout(2500);
        scene.look("prompter");
    }

    private static void note(Page page, int hands) {
        page.locator("#hands").fill(String.valueOf(hands));
        page.locator("#hands").press("Enter");
    }

    /// What the page reports of its rows, against its own clock and that of the audio device.
    @Test
    void theRowsFollowOneAnotherByTheClock() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        String plan =
                "from=made&count=1&least=1&most=1&rows=6&minus=0&language=en-US&wording=full"
                        + "&pacing=s&pace=1&unit=usual&round=none&method=frame&seed=5";
        scene.open("/call/stage?" + plan);
        page.evaluate(
                """
                window.seen = [];
                document.addEventListener("call-row", (event) =>
                  window.seen.push([event.detail.row, event.detail.clock, performance.now() / 1000]))
                """);
        assertThat(page.locator(".call-start")).isEnabled();
        page.locator(".call-start").click();
        assertThat(page.locator(".call-state"))
                .hasText(
                        "That was the last row",
                        new LocatorAssertions.HasTextOptions().setTimeout(30_000));
        @SuppressWarnings("unchecked") // what the script above gathers
        List<List<Number>> seen = (List<List<Number>>) page.evaluate("window.seen");

        List<List<Number>> rows =
                seen.stream().filter(row -> row.getFirst().intValue() > 0).toList();
        assertThat(rows)
                .extracting(row -> row.getFirst().intValue())
                .containsExactly(1, 2, 3, 4, 5, 6);
        double audio = rows.get(5).get(1).doubleValue() - rows.get(0).get(1).doubleValue();
        double wall = rows.get(5).get(2).doubleValue() - rows.get(0).get(2).doubleValue();
        assertThat(audio).isCloseTo(5, within(0.3));
        assertThat(wall).isCloseTo(audio, within(0.1));
    }

    @Test
    void theCallPausesBetweenRowsAndSaysTheLastRowAgain() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open(
                "/call/stage?from=made&count=1&least=1&most=1&rows=4&minus=0&pacing=s&pace=3&language=ja&wording=full&unit=usual&round=none&method=frame&seed=6");
        assertThat(page.locator(".call-start")).isEnabled();
        page.locator(".call-start").click();
        assertThat(page.locator(".call-now")).hasText("Row 1 of 4");
        page.locator(".call-start").click();
        assertThat(page.locator(".call-state")).hasText("Waiting before row 2");
        page.locator(".call-row-again").click();
        assertThat(page.locator(".call-state")).hasText("Calling");
        assertThat(page.locator(".call-state")).hasText("Waiting before row 2");
        page.locator(".call-start").click();
        assertThat(page.locator(".call-now")).hasText("Row 2 of 4");
        assertThat(page.locator(".call-state"))
                .hasText(
                        "That was the last row",
                        new LocatorAssertions.HasTextOptions().setTimeout(30_000));
    }

    @Test
    void theSoundIsAFileOfItsOwn() {
        Scene scene = desk.scene("ja", 1024);
        scene.open(
                "/call/stage?from=climb&rows=10&minus=2&pace=1&pacing=%2B&language=ja&wording=full&unit=usual&round=standing&method=frame&seed=7");
        Page page = scene.page();
        assertThat(page.locator(".call-save")).isVisible();
        String address = page.locator(".call-save").getAttribute("href");

        APIResponse sound = page.request().get(desk.url().replaceFirst("/$", "") + address);

        assertThat(sound.status()).isEqualTo(200);
        assertThat(sound.headers())
                .containsEntry("content-type", "audio/wav")
                .containsEntry("content-disposition", "attachment; filename=\"call-1.wav\"");
        assertThat(new String(sound.body(), 0, 4, StandardCharsets.US_ASCII)).isEqualTo("RIFF");
        assertThat(sound.body().length).isGreaterThan(10 * 3 * 32_000);
    }

    @Test
    void aPlanThatCannotBeReadComesBackWithItsFaults() {
        Scene scene = desk.scene("en", 1024);
        scene.open("/call/stage?from=made&rows=1&pace=fast&least=5&most=3&seed=7");
        Page page = scene.page();

        assertThat(page.locator("#rows-note")).containsText("2");
        assertThat(page.locator("#pace-note")).containsText("0.3");
        scene.look("call-faults");
    }
}
