package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.records.Work;

/// Numbers that are shown to a class: on the projector with answers on tablets, and on each tablet.
class ShownRoomWalkTest {

    private static final String PLAN =
            "/showing/stage?digits=1&rows=2&minus=0&seconds=1&per=each&look=figures&size=fit"
                    + "&place=here&seed=7";

    /// A busy machine drops frames, and what was not shown exactly is shown again, as in class.
    private static final int MOST_TIMES = 8;

    @RegisterExtension final WalkedDesk desk = new WalkedDesk();

    @Test
    void eachTabletShowsTheNumbersAndTakesTheAnswer() {
        Room room = new Room("ja", "tablets", 1024, 390);
        room.teacher.page().locator("#do-begin").click();
        Page first = room.tablets.getFirst().page();
        assertThat(first.locator("body.on-stage")).isVisible();
        assertThat(first.locator(".shown-number").first()).isAttached();
        assertThat(first.locator(".seat-pad")).isHidden();
        for (Scene tablet : room.tablets) {
            room.untilExact(() -> tablet.page().locator(".seat-pad"));
        }
        room.look("tablets-answering");
        room.write(0, 0, room.answer(0));
        room.write(1, 0, "7777");
        room.told(0);
        room.end(1);
    }

    @Test
    void theProjectorShowsTheNumbersAndTabletsTakeTheAnswer() {
        Room room = new Room("en", "board", 390, 1024);
        room.board.look("before");
        room.teacher.page().locator("#do-begin").click();
        assertThat(room.board.page().locator("body.on-stage")).isVisible();
        assertThat(room.tablets.getFirst().page().locator(".seat-status"))
                .containsText("large screen");
        room.tablets.getFirst().look("look-at-the-board");
        room.untilExact(() -> room.board.page().locator(".turn.answering"));
        room.look("board-answering");
        room.write(0, 0, room.answer(0));
        room.write(1, 0, room.answer(0));
        room.told(0);
        room.end(2);
    }

    @Test
    void aTabletWhosePageIsHiddenOrStoppedDoesNotCount() {
        Room room = new Room("en", "tablets", 390, 1024);
        room.teacher.page().locator("#do-begin").click();
        Page first = room.tablets.getFirst().page();
        assertThat(first.locator(".shown-number").first()).isAttached();
        first.locator(".seat-stage").click();
        assertThat(first.locator("body.on-stage")).hasCount(0);
        assertThat(first.locator(".seat-status")).containsText("does not count");
        assertThat(first.locator(".seat-pad")).isHidden();
        assertThat(room.teacher.page().locator(".seat-row").first().locator(".marks .void"))
                .hasCount(1);
        first.reload();
        assertThat(first.locator(".seat-status")).containsText("does not count");
        room.tablets.getFirst().look("spoiled");
        room.teacher.look("teacher-spoiled");
    }

    private final class Room {

        private final Scene teacher;
        private final Scene board;
        private final List<Scene> tablets;
        private final String id;

        Room(String language, String screen, int first, int second) {
            desk.book().settings().keep("showing.caution-read", "yes");
            desk.book().settings().keep("showing.seats", "200 250");
            teacher = desk.scene(language, 1024);
            board = desk.scene(language, 1920);
            tablets = List.of(desk.scene(language, first), desk.scene(language, second));
            Page page = teacher.page();
            teacher.open(PLAN);
            page.locator("a[href^='/rooms?source=showing']").click();
            page.check("input[name=screen][value=" + screen + "]");
            page.fill("#showings", "2");
            teacher.look("open-" + screen);
            page.locator(".open-room .actions button").click();
            id = page.url().replaceFirst("https?://[^/]+/room/", "");
            board.open("/room/" + id + "/board");
            String code = page.textContent(".room-join .code").strip();
            for (int i = 0; i < tablets.size(); i++) {
                Scene tablet = tablets.get(i);
                tablet.open("/join/" + code);
                tablet.page().fill("#alias", i == 0 ? "芽衣" : "Ren");
                tablet.page().locator(".join button").click();
                tablet.page().waitForSelector(".seat-status:not(:empty)");
            }
            assertThat(page.locator(".seat-row")).hasCount(2);
        }

        /// Shows the same again until it was shown exactly.
        void untilExact(Supplier<Locator> isThere) {
            for (int times = 1; times < MOST_TIMES; times++) {
                for (int i = 0; i < 60 && !isThere.get().isVisible(); i++) {
                    if (isSpoiled()) {
                        break;
                    }
                    teacher.page().waitForTimeout(250);
                }
                if (isThere.get().isVisible()) {
                    return;
                }
                teacher.page().locator("#do-again").click();
                teacher.page().waitForTimeout(500);
            }
            assertThat(isThere.get()).isVisible();
        }

        private boolean isSpoiled() {
            return teacher.page().locator(".turn.spoiled, .marks .void").count() > 0;
        }

        String answer(int problem) {
            return problems().get(problem).answer().value().toPlainString();
        }

        private List<Problem> problems() {
            return desk.book().sheets().latest(1).getFirst().sheet().problems();
        }

        void write(int tablet, int problem, String written) {
            Page page = tablets.get(tablet).page();
            assertThat(page.locator(".seat-pad"))
                    .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(20_000));
            written.chars().forEach(key -> page.click("[data-key='" + (char) key + "']"));
            assertThat(page.locator("#answer-" + problem)).hasValue(written);
            page.click("[data-key='after']");
            assertThat(
                            teacher.page()
                                    .locator(".seat-row")
                                    .nth(tablet)
                                    .locator(".marks i")
                                    .nth(problem))
                    .hasClass(Pattern.compile("right|wrong"));
        }

        void told(int problem) {
            teacher.page().locator("#do-reveal").click();
            for (Scene tablet : tablets) {
                assertThat(tablet.page().locator(".seat-status")).containsText(answer(problem));
                assertThat(tablet.page().locator(".seat-pad")).isHidden();
            }
            assertThat(board.page().locator(".turn-answer")).containsText(answer(problem));
            look("told");
        }

        void look(String what) {
            tablets.forEach(tablet -> tablet.look(what));
            board.look(what);
            teacher.look(what);
        }

        void end(long right) {
            teacher.page().locator("#do-end").click();
            assertThat(teacher.page().locator(".phase.ended")).isVisible();
            List<Work> work =
                    desk.book().work().latest(9).stream()
                            .filter(one -> one.id().startsWith(id))
                            .toList();
            assertThat(work.stream().mapToLong(Work::right).sum()).isEqualTo(right);
            assertThat(problems()).allMatch(one -> one.terms().mode() == Mode.MENTAL);
        }
    }
}
