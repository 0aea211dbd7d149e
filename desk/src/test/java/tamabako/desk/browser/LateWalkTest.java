package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.desk.room.RoomState;
import tamabako.records.Work;

/// A tablet that loses the network in one round and comes back in the next, or when the room is
/// closed.
class LateWalkTest {

    /// Browsers note a lost network as trouble, so this page is only painted.
    private static final Path PICTURE = Path.of("target", "screenshots", "en-390-later-tablet.png");

    @RegisterExtension final WalkedDesk desk = new WalkedDesk();

    @Test
    void whatWasWrittenWithoutANetworkIsHandedInInTheNextRound() {
        RoomClass room = new RoomClass(desk);
        String code = room.open("one", "5");
        Scene away = room.sit(6, code, 390);
        Page page = away.page();
        room.press("start");
        assertThat(page.locator(".seat-pad")).isVisible();
        page.context().setOffline(true);
        for (int i = 0; i < 2; i++) {
            page.locator("#answer-" + i).fill(RoomClass.RIGHT.get(i));
            page.locator("#answer-" + i).press("Enter");
        }
        assertThat(page.locator(".seat-status")).containsText("2 to be sent");
        room.press("end");
        room.press("repeat");
        room.press("start");
        assertThat(room.book().work().of("PUPIL6")).isEmpty();

        page.context().setOffline(false);
        assertThat(page.locator(".seat-status")).containsText("are with your teacher");
        assertThat(page.locator("#answer-0")).hasValue("");
        page.screenshot(new Page.ScreenshotOptions().setPath(PICTURE));
        Page teacher = room.teacher.page();
        assertThat(teacher.locator(".asks")).containsText("2 answers came too late");
        room.teacher.look("later");
        page.reload();
        assertThat(teacher.locator(".asks")).containsText("2 answers came too late");
        room.press("admit-late");
        assertThat(teacher.locator(".asks")).hasCount(0);

        List<Work> work = room.book().work().of("PUPIL6");
        assertThat(work).hasSize(1);
        assertThat(work.getFirst().right()).isEqualTo(2);
    }

    @Test
    void whatWasStillOnATabletWhenTheRoomWasClosedIsLetInAfterwards() {
        RoomClass room = new RoomClass(desk);
        String code = room.open("one", "5");
        Scene away = room.sit(7, code, 390);
        Page page = away.page();
        room.press("start");
        assertThat(page.locator(".seat-pad")).isVisible();
        page.context().setOffline(true);
        page.locator("#answer-0").fill(RoomClass.RIGHT.get(0));
        page.locator("#answer-0").press("Enter");
        assertThat(page.locator(".seat-status")).containsText("1 to be sent");
        room.press("end");
        Page teacher = room.teacher.page();
        assertThat(teacher.locator(".phase.ended")).isVisible();
        teacher.waitForTimeout(RoomState.GRACE);
        room.press("close");
        assertThat(teacher.locator("#late-rooms")).hasCount(0);

        page.context().setOffline(false);
        assertThat(page.locator(".seat-trouble")).containsText("safe with your teacher");
        assertThat(page.locator(".seat-pad")).isHidden();
        page.reload();
        assertThat(page.locator(".seat-status")).containsText("The room is closed");

        teacher.reload();
        room.teacher.look("late-rooms");
        teacher.click("#late-rooms + .entries a");
        assertThat(teacher.locator(".late-seat")).containsText(RoomClass.RIGHT.get(0));
        room.teacher.look("late-answers");
        assertThat(room.book().work().of("PUPIL7")).isEmpty();
        room.press("admit-late");
        assertThat(teacher.locator(".late-seat")).hasCount(0);
        List<Work> work = room.book().work().of("PUPIL7");
        assertThat(work).singleElement().satisfies(one -> assertThat(one.right()).isEqualTo(1));
    }
}
