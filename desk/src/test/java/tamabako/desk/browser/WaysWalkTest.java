package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/// A pupil who hears the numbers of a showing on the own tablet, and one who reads those of a call.
class WaysWalkTest {

    private static final String SHOWING =
            "/showing/stage?digits=1&rows=3&minus=0&seconds=1&per=each&look=figures&size=fit"
                    + "&place=here&seed=7";

    private static final String CALL =
            "/call/stage?from=made&count=2&least=1&most=1&rows=3&minus=0&wording=full"
                    + "&pacing=s&pace=1&unit=none&round=standing&method=frame&seed=5&language=ja";

    @RegisterExtension final WalkedDesk desk = new WalkedDesk();

    @Test
    void aPupilHearsTheNumbersThatTheProjectorShows() {
        Room room = new Room("en", SHOWING, "showing", "board");
        Scene mei = room.sit("Mei", 390);
        room.give("spoken");
        Page page = mei.page();
        assertThat(page.locator(".seat-status")).containsText("spoken on this tablet");
        assertThat(page.locator(".seat-sound button")).isVisible();
        mei.look("sound-off");
        page.locator(".seat-sound button").click();
        assertThat(page.locator(".seat-sound button")).isHidden();
        room.teacher.page().locator("#do-begin").click();
        assertThat(page.locator(".seat-status")).containsText("Listen");
        assertThat(page.locator("body.on-stage")).hasCount(0);
        mei.look("listening");
        room.lead("open", 0);
        assertThat(page.locator(".seat-pad")).isVisible(patient());
        room.write(page, 0, room.answer(0));
        room.lead("reveal", 0);
        assertThat(page.locator(".seat-status")).containsText("Right");
        room.teacher.look("teacher-with-a-way");
    }

    @Test
    void aPupilReadsEachRowOfACallAfterItWasSaidAndHandsCountBesideTheTablets() {
        Room room = new Room("ja", CALL, "call", "");
        Scene mei = room.sit("芽衣", 390);
        room.give("captions");
        Page teacher = room.teacher.page();
        teacher.locator("#to-caller").click();
        teacher.fill("#room-hands", "many");
        teacher.press("#room-hands", "Enter");
        assertThat(teacher.locator("#room-hands-wrong")).not().isEmpty();
        teacher.fill("#room-hands", "4");
        teacher.press("#room-hands", "Enter");
        assertThat(teacher.locator(".call-tally li").first()).containsText("5");
        Page page = mei.page();
        assertThat(page.locator(".seat-caption")).isHidden();
        page.evaluate(
                """
                window.seen = [];
                new MutationObserver(() => {
                    const text = document.querySelector('.seat-caption').textContent.trim();
                    if (text && text !== window.seen.at(-1)?.text) window.seen.push({ text, at: performance.now() });
                }).observe(document.querySelector('.seat-caption'), { childList: true, subtree: true });
                """);
        teacher.locator(".call-start").click();
        assertThat(page.locator(".seat-caption")).containsText("2.", said());
        mei.look("captions");
        assertThat(page.locator(".seat-pad")).isVisible(patient());
        assertThat(page.locator(".seat-caption")).containsText("3.", said());
        mei.look("captions-and-pad");
        room.write(page, 0, room.answer(0));
        teacher.fill("#room-hands", "3");
        teacher.press("#room-hands", "Enter");
        teacher.locator(".call-show").click();
        assertThat(teacher.locator(".call-tally li").nth(1)).containsText("4");
        room.teacher.look("caller-with-hands");
        assertThat(rests(page)).hasSize(2).allMatch(rest -> rest >= 990);
    }

    /// From each caption to the next, in milliseconds.
    private static List<Double> rests(Page page) {
        List<?> seen =
                (List<?>)
                        page.evaluate(
                                "window.seen.slice(1).map((one, i) => one.at - window.seen[i].at)");
        return seen.stream().map(one -> ((Number) one).doubleValue()).toList();
    }

    private static LocatorAssertions.IsVisibleOptions patient() {
        return new LocatorAssertions.IsVisibleOptions().setTimeout(30_000);
    }

    private static LocatorAssertions.ContainsTextOptions said() {
        return new LocatorAssertions.ContainsTextOptions().setTimeout(30_000);
    }

    /// A room that the teacher opened for a plan.
    private final class Room {

        private final String language;
        final Scene teacher;

        Room(String language, String plan, String source, String screen) {
            this.language = language;
            desk.book().settings().keep("showing.caution-read", "yes");
            desk.book().settings().keep("showing.seats", "200 250");
            teacher = desk.scene(language, 1024);
            teacher.open(plan);
            Page page = teacher.page();
            page.locator("a[href^='/rooms?source=" + source + "']").click();
            if (!screen.isEmpty()) {
                page.check("input[name=screen][value=" + screen + "]");
                page.fill("#showings", "2");
            }
            page.locator(".open-room .actions button").click();
        }

        Scene sit(String name, int width) {
            Scene tablet = desk.scene(language, width);
            tablet.open("/join/" + teacher.page().textContent(".room-join .code").strip());
            tablet.page().fill("#alias", name);
            tablet.page().locator(".join button").click();
            tablet.page().waitForSelector(".seat-status:not(:empty)");
            assertThat(teacher.page().locator(".seat-row")).hasCount(1);
            return tablet;
        }

        /// Gives the one pupil a way, as the teacher does.
        void give(String way) {
            Page page = teacher.page();
            page.locator("#more-1 summary").click();
            page.selectOption("#way-1", way);
            page.evaluate("document.activeElement.blur()");
            lead("lock", 0);
            assertThat(page.locator("#do-lock[value=unlock]")).isVisible();
            page.locator("button[value=way]").click();
            assertThat(page.locator(".seat-who .quiet")).not().isEmpty();
        }

        /// What the projector's page tells when it has shown everything, or the teacher does.
        void lead(String move, int problem) {
            String room = teacher.page().url();
            teacher.page()
                    .request()
                    .post(
                            room + "/do",
                            com.microsoft.playwright.options.RequestOptions.create()
                                    .setHeader("Origin", room.replaceFirst("/room/.*", ""))
                                    .setForm(
                                            com.microsoft.playwright.options.FormData.create()
                                                    .set("do", move)
                                                    .set("problem", String.valueOf(problem))));
        }

        String answer(int problem) {
            return desk.book()
                    .sheets()
                    .latest(1)
                    .getFirst()
                    .sheet()
                    .problems()
                    .get(problem)
                    .answer()
                    .value()
                    .toPlainString();
        }

        void write(Page page, int problem, String written) {
            written.chars().forEach(key -> page.click("[data-key='" + (char) key + "']"));
            assertThat(page.locator("#answer-" + problem)).hasValue(written);
            page.click("[data-key='after']");
            assertThat(page.locator(".seat-status")).not().isEmpty();
        }
    }
}
