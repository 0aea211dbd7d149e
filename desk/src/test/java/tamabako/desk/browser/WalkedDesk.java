package tamabako.desk.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import java.net.InetAddress;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import tamabako.desk.TestFolder;
import tamabako.desk.opening.OpenDesk;
import tamabako.records.ClassBook;

/// A desk with the demo class, and windows at it.
///
/// Registered in a static field it is one desk for all tests of the class, else a new one for each.
final class WalkedDesk
        implements BeforeAllCallback, BeforeEachCallback, AfterEachCallback, AfterAllCallback {

    private final Windows windows = new Windows();
    private boolean isOfTheClass;
    private OpenDesk desk;
    private TestFolder folder;

    @SuppressWarnings("NullAway") // there before the first test
    WalkedDesk() {}

    /// A window of that width at the desk, closed after the test.
    Scene scene(String language, int width) {
        return windows.at(desk.url(), language, width);
    }

    /// A window of that width at another desk.
    Scene scene(OpenDesk other, String language, int width) {
        return windows.at(other.url(), language, width);
    }

    /// A window as those options say.
    BrowserContext plain(Browser.NewContextOptions options) {
        return windows.plain(options);
    }

    /// Another desk with the demo class, closed after the test.
    OpenDesk another() {
        return windows.keep(open(windows.keep(new TestFolder())));
    }

    String url() {
        return desk.url();
    }

    ClassBook book() {
        return desk.book();
    }

    /// Where a test may put files.
    Path folder() {
        return folder.path();
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        windows.beforeAll(context);
        isOfTheClass = true;
        open();
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        windows.beforeEach(context);
        if (!isOfTheClass) {
            open();
        }
    }

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        windows.afterEach(context);
        if (!isOfTheClass) {
            close();
        }
    }

    @Override
    public void afterAll(ExtensionContext context) throws Exception {
        windows.afterAll(context);
        close();
    }

    private void open() {
        folder = new TestFolder();
        desk = open(folder);
    }

    private void close() {
        desk.close();
        folder.close();
    }

    private static OpenDesk open(TestFolder folder) {
        DemoBook.putInto(folder.path());
        return OpenDesk.open(folder.path(), false, InetAddress.getLoopbackAddress(), 0);
    }
}
