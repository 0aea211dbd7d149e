package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.records.Work;

/// A teacher, a projector and twelve tablets through a whole round.
class RoomWalkTest {

    @RegisterExtension final WalkedDesk desk = new WalkedDesk();

    @Test
    void aClassOfTwelveWorksASheetAndTheTeacherSeesAllOfIt() {
        RoomClass room = new RoomClass(desk);
        room.teacher.open("/rooms");
        room.teacher.look("rooms");
        String code = room.open("one", "5");
        room.projector.look("board-empty");
        List<Scene> pupils = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            pupils.add(room.sit(i, code, i % 2 == 0 ? 390 : 1024));
        }
        Page teacher = room.teacher.page();
        Page board = room.projector.page();
        assertThat(teacher.locator(".seat-row")).hasCount(12);
        assertThat(board.locator(".board-seats li")).hasCount(12);
        room.projector.look("board-waiting");
        pupils.getFirst().look("seat-waiting");
        assertThat(pupils.getFirst().page().locator("html")).hasAttribute("lang", "ja");

        room.press("start");
        Page first = pupils.getFirst().page();
        assertThat(first.locator(".seat-pad")).isVisible();
        pupils.getFirst().look("seat-working");
        for (String key : List.of("6", "4", "back", "3", "after")) {
            first.click("[data-key='" + key + "']");
        }
        assertThat(teacher.locator(".seat-row:nth-child(1) .marks i.right")).hasCount(1);
        assertThat(board.locator(".marks")).hasCount(0);
        first.click(".seat-frame summary");
        pupils.getFirst().look("seat-frame");
        first.click(".seat-frame summary");

        wholeSheet(pupils.get(1).page(), 1);
        offline(pupils.get(2).page());
        reloaded(pupils.get(3).page());
        for (int i = 4; i < 12; i++) {
            wholeSheet(pupils.get(i).page(), i);
        }
        room.teacher.look("teacher-under-way");
        room.press("pause");
        assertThat(first.locator(".seat-work")).isHidden();
        pupils.getFirst().look("seat-paused");
        room.press("start");
        teacher.click("#add-60");
        assertThat(first.locator(".seat-clock")).hasText(Pattern.compile("^5:\\d\\d|6:00$"));

        handIn(pupils.get(1).page());
        assertThat(board.locator(".board-seats li.done")).hasCount(1);
        room.projector.look("board-under-way");

        room.press("end");
        assertThat(teacher.locator(".phase.ended")).isVisible();
        room.press("show-marks");
        assertThat(board.locator(".room-slips li").first()).containsText("人:2番で「");
        room.projector.look("board-ended");
        assertThat(teacher.locator(".room-slips li").first())
                .containsText(Pattern.compile("\\d+ pupils: .*carry.* in No. 2"));
        room.teacher.look("teacher-ended");
        assertThat(pupils.get(1).page().locator(".seat-status")).containsText("6");
        pupils.get(1).look("seat-ended");
        pupils.get(7).look("seat-ended-en");

        List<Work> work =
                room.book().work().latest(50).stream()
                        .filter(one -> one.sheetId().equals("ROOM-TEST"))
                        .toList();
        assertThat(work).hasSize(12);
        assertThat(work).allSatisfy(one -> assertThat(one.pupilId()).isPresent());
        assertThat(room.book().work().of("PUPIL2").getFirst().right()).isEqualTo(6);
        assertThat(room.book().work().of("PUPIL3").getFirst().right()).isEqualTo(6);

        String slip = teacher.locator(".room-slips a").first().getAttribute("href");
        room.projector.open(slip);
        assertThat(board.locator("h1")).isVisible();
        room.projector.look("slip-worked");
    }

    private static void type(Page page, int problem, String written) {
        page.locator("#answer-" + problem).fill(written);
        page.locator("#answer-" + problem).press("Enter");
    }

    /// From the fifth pupil on, six drop the carry in the second problem.
    private static void wholeSheet(Page page, int pupil) {
        for (int i = 0; i < RoomClass.RIGHT.size(); i++) {
            boolean slips = i == 1 && pupil >= 6;
            type(page, i, slips ? "12" : RoomClass.RIGHT.get(i));
        }
        page.click("[data-key=before]");
    }

    private static void handIn(Page page) {
        page.click(".seat-hand-in");
        page.click(".seat-hand-in");
        assertThat(page.locator(".seat-pad")).isHidden();
    }

    private static void offline(Page page) {
        type(page, 0, RoomClass.RIGHT.getFirst());
        page.context().setOffline(true);
        for (int i = 1; i < RoomClass.RIGHT.size(); i++) {
            type(page, i, RoomClass.RIGHT.get(i));
        }
        page.click("[data-key=before]");
        assertThat(page.locator(".seat-status")).containsText("送信待ち5件");
        page.context().setOffline(false);
        assertThat(page.locator(".seat-status")).not().containsText("送信待ち");
    }

    private static void reloaded(Page page) {
        type(page, 0, RoomClass.RIGHT.getFirst());
        page.locator("#answer-1").pressSequentially("11");
        page.reload();
        assertThat(page.locator("#answer-0")).hasValue(RoomClass.RIGHT.getFirst());
        assertThat(page.locator("#answer-1")).hasValue("11");
        page.click("[data-key=before]");
        for (int i = 1; i < RoomClass.RIGHT.size(); i++) {
            type(page, i, RoomClass.RIGHT.get(i));
        }
        page.click("[data-key=before]");
    }
}
