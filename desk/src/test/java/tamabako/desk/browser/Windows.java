package tamabako.desk.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/// Windows of the browser. What a test opens is closed after it; what was opened for all tests of a
/// class is closed after the last of them.
final class Windows
        implements BeforeAllCallback, BeforeEachCallback, AfterEachCallback, AfterAllCallback {

    private final Deque<AutoCloseable> open = new ArrayDeque<>();
    private Browser browser;
    private int ofTheClass;

    @SuppressWarnings("NullAway") // there before the first test
    Windows() {}

    /// A window of that width at the desk of that address.
    Scene at(String desk, String language, int width) {
        return keep(new Scene(browser, desk, language, width));
    }

    /// A window as those options say, without an eye on what goes wrong in it.
    BrowserContext plain(Browser.NewContextOptions options) {
        return keep(browser.newContext(options));
    }

    /// Closes `what` with the windows.
    <T extends AutoCloseable> T keep(T what) {
        open.push(what);
        return what;
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        browser = TeachersBrowser.shared(context);
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        browser = TeachersBrowser.shared(context);
        ofTheClass = open.size();
    }

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        closeDownTo(ofTheClass);
    }

    @Override
    public void afterAll(ExtensionContext context) throws Exception {
        closeDownTo(0);
    }

    private void closeDownTo(int left) throws Exception {
        while (open.size() > left) {
            open.pop().close();
        }
    }
}
