package tamabako.desk.browser;

import com.microsoft.playwright.Page;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.problems.json.ProblemJson;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.KeptSheet;
import tamabako.records.Pupil;

/// A desk with a class of twelve and a sheet of six, the teacher at it and the projector beside.
final class RoomClass {

    static final List<String> NAMES =
            List.of("葵", "陽向", "凛", "蓮", "紬", "湊", "Mia", "Noah", "Ella", "Leo", "Ana", "Tom");

    /// The second needs a carry to the hundreds: who drops it writes 12.
    static final List<String> ROWS =
            List.of(
                    "\"54\",\"-29\",\"38\"",
                    "\"34\",\"78\"",
                    "\"21\",\"13\",\"52\"",
                    "\"906\",\"-45\"",
                    "\"7\",\"6\",\"5\"",
                    "\"1200\",\"345\"");

    static final List<String> RIGHT = List.of("63", "112", "86", "861", "18", "1,545");

    private final WalkedDesk desk;
    private final Group group = Group.of("火曜 Tuesday");
    final Scene teacher;
    final Scene projector;

    RoomClass(WalkedDesk desk) {
        this.desk = desk;
        desk.book().groups().keep(group);
        for (int i = 0; i < NAMES.size(); i++) {
            Locale language = i < 6 ? Locale.JAPANESE : Locale.ENGLISH;
            desk.book()
                    .pupils()
                    .keep(new Pupil("PUPIL" + i, group.id(), NAMES.get(i), language, false));
        }
        desk.book().sheets().keep(new KeptSheet(sheet(), Instant.now(), false));
        teacher = desk.scene("en", 1024);
        projector = desk.scene("ja", 1920);
    }

    private static Sheet sheet() {
        List<Problem> problems =
                java.util.stream.IntStream.range(0, ROWS.size())
                        .mapToObj(i ->
                                ProblemJson.parse(
                                        "{\"id\":\"%d\",\"kind\":\"column\",\"rows\":[%s]}"
                                                .formatted(i + 1, ROWS.get(i))))
                        .toList();
        return new Sheet("ROOM-TEST", "Warm-up", problems);
    }

    ClassBook book() {
        return desk.book();
    }

    /// Opens a room at the teacher's page, and the projector's page of it.
    ///
    /// @param view `one` or `all`
    /// @return the code
    String open(String view, String minutes) {
        return open(view, minutes, "");
    }

    /// The same, for so many seats at most.
    String open(String view, String minutes, String most) {
        Page page = teacher.page();
        teacher.open("/rooms");
        page.selectOption("#source", "sheet:ROOM-TEST");
        page.selectOption("#group", group.id());
        page.fill("#minutes", minutes);
        page.check("input[name=view][value=" + view + "]");
        page.evaluate("most => document.querySelector('#most').value = most", most);
        page.click(".open-room .actions button");
        projector.open(page.url().replaceFirst("https?://[^/]+", "") + "/board");
        return page.textContent(".room-join .code").strip();
    }

    /// A window on a tablet of its own.
    Scene window(int pupil, int width) {
        return desk.scene(pupil < 6 ? "ja" : "en", width);
    }

    /// Lets a pupil come in and sit down.
    Scene sit(int pupil, String code, int width) {
        Scene scene = window(pupil, width);
        scene.open("/join");
        scene.page().fill("#code", code.toLowerCase(Locale.ROOT));
        scene.page().click(".join button");
        scene.page().check("input[value=PUPIL" + pupil + "]");
        scene.page().click(".join button");
        scene.page().waitForSelector(".seat-status:not(:empty)");
        return scene;
    }

    /// Presses a button of the teacher's page.
    void press(String button) {
        teacher.page().click("button[value=" + button + "]");
    }
}
