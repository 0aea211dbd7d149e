package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What goes wrong at the door of a room and in it, on a telephone: each is a plain message and a
/// way on.
class RoomTroubleWalkTest {

    @RegisterExtension final WalkedDesk desk = new WalkedDesk();

    /// @param pupil who reads that language
    @ParameterizedTest
    @CsvSource({
        "0, 6文字, 満席です, 席を外せます, 別のタブレットの自分, 少し待って, あなたですか, 移りました, 外しました, 閉じられました, 入室番号を入れる",
        "6, No room has this code, is full, can be taken away, on another tablet, One moment,"
                + " Is that you?, went on to another, took this seat away, is closed, Type a code"
    })
    void eachTroubleIsToldPlainlyWithAWayOn(
            int pupil,
            String wrong,
            String full,
            String mend,
            String taken,
            String moment,
            String asked,
            String moved,
            String removed,
            String closed,
            String another) {
        RoomClass room = new RoomClass(desk);
        Scene tablet = room.window(pupil, 390);
        Scene second = room.window(pupil, 390);
        String code = room.open("one", "5", "1");
        Page page = tablet.page();
        tablet.open("/join");
        page.fill("#code", "AAAAAA");
        page.click(".join button");
        assertThat(page.locator("#code-note")).containsText(wrong);
        tablet.look("wrong-code");
        page.fill("#code", code);
        page.click(".join button");
        page.check("input[value=PUPIL" + pupil + "]");
        page.click(".join button");
        assertThat(page.locator(".seat-status")).not().isEmpty();

        Page other = second.page();
        second.open("/join/" + code);
        other.check("input[value=PUPIL" + (pupil + 1) + "]");
        other.click(".join button");
        assertThat(other.locator(".trouble")).containsText(full);
        assertThat(other.locator(".trouble")).containsText(mend);
        second.look("full");
        other.click(".trouble a.button");
        other.check("input[value=PUPIL" + pupil + "]");
        other.click(".join button");
        assertThat(other.locator(".trouble")).containsText(taken);
        second.look("taken");
        other.click(".trouble button");
        assertThat(other.locator(".trouble")).containsText(moment);
        second.look("asking");
        assertThat(page.locator(".seat-asked")).containsText(asked);
        tablet.look("asked");
        page.click(".seat-asked button[value='1']");
        assertThat(page.locator(".trouble")).containsText(moved);
        tablet.look("moved");
        assertThat(other.locator(".seat-status")).not().isEmpty();

        room.teacher.page().locator("#more-1 summary").click();
        room.press("remove");
        assertThat(other.locator(".trouble")).containsText(removed);
        second.look("removed");
        other.click(".trouble a.button");
        other.check("input[value=PUPIL" + pupil + "]");
        other.click(".join button");
        assertThat(other.locator(".seat-status")).not().isEmpty();
        room.press("close");
        assertThat(other.locator(".seat-status")).containsText(closed);
        assertThat(other.locator(".seat-trouble")).isHidden();
        assertThat(other.locator(".seat-way-on a")).hasText(another);
        second.look("closed");
    }
}
