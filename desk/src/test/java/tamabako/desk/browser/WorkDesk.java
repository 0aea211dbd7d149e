package tamabako.desk.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.net.InetAddress;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import tamabako.desk.web.DeskServer;
import tamabako.desk.work.WorkPages;

/// A desk with the pages of worked sums alone, open for all tests of a class, and windows at it.
final class WorkDesk
        implements BeforeAllCallback, BeforeEachCallback, AfterEachCallback, AfterAllCallback {

    private final DeskServer desk =
            DeskServer.start(InetAddress.getLoopbackAddress(), 0, List.of(new WorkPages()));
    private final Windows windows = new Windows();
    private final Windows kept = new Windows();
    private final Map<Integer, Scene> again = new HashMap<>();

    /// A window of that width at `path`, for someone who asked for less motion: beads jump.
    Scene at(String path, String language, int width) {
        return at(windows, path, language, width);
    }

    private Scene at(Windows where, String path, String language, int width) {
        Scene scene = where.at(desk.url(), language, width);
        scene.page()
                .emulateMedia(
                        new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        scene.open(path);
        return scene;
    }

    /// A page at `path` in the English window of that width, which is kept from one test to the
    /// next.
    Page again(String path, int width) {
        Scene scene = again.computeIfAbsent(width, _ -> at(kept, "/frame", "en", width));
        scene.open(path);
        return scene.page();
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        windows.beforeAll(context);
        kept.beforeAll(context);
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        windows.beforeEach(context);
    }

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        windows.afterEach(context);
    }

    @Override
    public void afterAll(ExtensionContext context) throws Exception {
        windows.afterAll(context);
        kept.afterAll(context);
        desk.close();
    }
}
