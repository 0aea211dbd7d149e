package tamabako.desk.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.net.InetAddress;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tamabako.desk.web.DeskServer;
import tamabako.desk.work.WorkPages;

/// A desk with the pages of worked sums alone, and a browser before it.
final class WorkDesk implements AutoCloseable {

    private final DeskServer desk =
            DeskServer.start(InetAddress.getLoopbackAddress(), 0, List.of(new WorkPages()));
    private final TeachersBrowser browser = new TeachersBrowser();
    private final Map<Integer, Scene> kept = new HashMap<>();

    /// A window of that width at `path`, for someone who asked for less motion: beads jump.
    Scene at(String path, String language, int width) {
        Scene scene = new Scene(browser.browser(), desk.url(), language, width);
        scene.page()
                .emulateMedia(
                        new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        scene.open(path);
        return scene;
    }

    /// A page at `path` in the English window of that width, which is kept from one test to the
    /// next.
    Page again(String path, int width) {
        Scene scene = kept.computeIfAbsent(width, _ -> at("/frame", "en", width));
        scene.open(path);
        return scene.page();
    }

    @Override
    public void close() {
        browser.close();
        desk.close();
    }
}
