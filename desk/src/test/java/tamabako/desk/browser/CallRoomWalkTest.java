package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tamabako.problems.Mode;
import tamabako.records.Work;

/// A class that answers a caller on tablets: the teacher's caller page, the projector, three
/// tablets.
class CallRoomWalkTest {

    @RegisterExtension final WalkedDesk desk = new WalkedDesk();

    @Test
    void theClassAnswersTwoCallsOnTablets() {
        walk("en", "en-US", 390);
    }

    @Test
    void theClassAnswersInJapanese() {
        walk("ja", "ja", 1024);
    }

    private void walk(String language, String caller, int tabletWidth) {
        Scene teacher = desk.scene(language, 1024);
        Scene board = desk.scene(language, 1920);
        Scene mei = desk.scene(language, tabletWidth);
        Scene ren = desk.scene(language, 1024);
        Scene aoi = desk.scene(language, 390);
        Page page = teacher.page();
        teacher.open(
                "/call/stage?from=made&count=2&least=1&most=1&rows=3&minus=0&wording=full"
                        + "&pacing=s&pace=1&unit=usual&round=standing&method=frame&seed=5"
                        + "&language="
                        + caller);
        page.locator("a[href^='/rooms?source=call']").click();
        teacher.look("open-call-room");
        page.locator(".open-room .actions button").click();
        String room = page.url().replaceFirst("https?://[^/]+", "");
        String code = page.textContent(".room-join .code").strip();
        teacher.look("room-before-call");
        board.open(room + "/board");
        List<Scene> tablets = List.of(mei, ren, aoi);
        for (int i = 0; i < tablets.size(); i++) {
            sit(tablets.get(i), code, List.of("芽衣", "Ren", "Aoi").get(i));
        }
        mei.look("tablet-before");
        page.locator("#to-caller").click();
        assertThat(page.locator(".turn-seats li")).hasCount(3);

        page.locator(".call-start").click();
        for (Scene tablet : tablets) {
            assertThat(tablet.page().locator(".seat-status")).not().isEmpty();
            assertThat(tablet.page().locator(".seat-pad")).isHidden();
        }
        assertThat(board.page().locator(".turn.under-way")).isVisible();
        mei.look("tablet-listening");
        teacher.look("caller-calling");
        assertThat(mei.page().locator(".seat-pad")).isVisible(patient());
        String answer = answer(0);
        write(mei.page(), 0, answer);
        write(ren.page(), 0, answer);
        write(aoi.page(), 0, "7777");
        assertThat(page.locator(".turn-seats i.right")).hasCount(2);
        assertThat(page.locator(".turn-seats i.wrong")).hasCount(1);
        mei.look("tablet-answered");
        board.look("board-answering");
        page.locator(".call-show").click();
        assertThat(mei.page().locator(".seat-status")).containsText(answer);
        assertThat(mei.page().locator(".seat-pad")).isHidden();
        assertThat(page.locator(".call-tally li")).hasCount(2);
        assertThat(page.locator(".call-tally li").nth(1)).containsText("2");
        assertThat(page.locator(".turn-seats li.out")).hasCount(1);
        assertThat(board.page().locator(".turn-answer")).containsText(answer);
        mei.look("tablet-told-right");
        aoi.look("tablet-told-wrong");
        board.look("board-told");
        teacher.look("caller-told");

        page.reload();
        assertThat(page.locator(".call-which")).containsText("2");
        assertThat(page.locator(".call-tally li")).hasCount(2);
        page.locator(".call-start").click();
        ren.page().reload();
        assertThat(ren.page().locator(".seat-pad")).isVisible(patient());
        write(mei.page(), 1, answer(1));
        assertThat(page.locator(".turn-seats i.right")).hasCount(3);
        page.locator(".call-show").click();
        assertThat(page.locator(".call-outcome")).not().isEmpty();
        page.locator("#do-end").click();
        assertThat(page.locator(".phase.ended")).isVisible();
        assertThat(mei.page().locator(".seat-status")).containsText("2");
        mei.look("tablet-ended");
        teacher.look("caller-ended");

        List<Work> work =
                desk.book().work().latest(9).stream()
                        .filter(one -> one.id().startsWith(room.replace("/room/", "")))
                        .toList();
        assertThat(work).hasSize(3);
        assertThat(work.stream().mapToLong(Work::right).sum()).isEqualTo(3);
        assertThat(
                        desk.book()
                                .sheets()
                                .find(work.getFirst().sheetId())
                                .orElseThrow()
                                .sheet()
                                .problems())
                .allMatch(problem -> problem.terms().mode() == Mode.CALLED);
    }

    private static LocatorAssertions.IsVisibleOptions patient() {
        return new LocatorAssertions.IsVisibleOptions().setTimeout(30_000);
    }

    private String answer(int problem) {
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

    private static void sit(Scene tablet, String code, String name) {
        tablet.open("/join/" + code);
        tablet.page().fill("#alias", name);
        tablet.page().locator(".join button").click();
        tablet.page().waitForSelector(".seat-status:not(:empty)");
    }

    private static void write(Page page, int problem, String written) {
        written.chars().forEach(key -> page.click("[data-key='" + (char) key + "']"));
        assertThat(page.locator("#answer-" + problem)).hasValue(written);
        page.click("[data-key='after']");
    }
}
