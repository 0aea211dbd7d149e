package tamabako.desk.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;

/// Chromium as it is installed on this machine: where the system property `tamabako.browser` or the
/// variable TAMABAKO_BROWSER says, else where Debian puts it.
///
/// Starting it takes seconds, so that all tests of a JVM share one; each has windows of its own,
/// which know nothing of each other.
final class TeachersBrowser implements AutoCloseable {

    private static final Namespace HERE = Namespace.create(TeachersBrowser.class);

    private final Playwright playwright;
    private final Browser browser;

    private TeachersBrowser() {
        playwright =
                Playwright.create(
                        new Playwright.CreateOptions()
                                .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser =
                playwright
                        .chromium()
                        .launch(
                                new BrowserType.LaunchOptions()
                                        .setExecutablePath(place())
                                        .setArgs(
                                                List.of(
                                                        "--no-sandbox",
                                                        "--disable-gpu",
                                                        "--disable-quic",
                                                        "--no-first-run",
                                                        "--disable-background-networking",
                                                        "--disable-component-update",
                                                        "--disable-sync",
                                                        "--autoplay-policy=no-user-gesture-required")));
    }

    /// The browser that every test of this JVM shares; it goes when the last of them is over.
    static Browser shared(ExtensionContext context) {
        return context.getStore(StoreScope.LAUNCHER_SESSION, HERE)
                .computeIfAbsent(
                        TeachersBrowser.class, _ -> new TeachersBrowser(), TeachersBrowser.class)
                .browser;
    }

    private static Path place() {
        return Stream.of(
                        Optional.ofNullable(System.getProperty("tamabako.browser")),
                        Optional.ofNullable(System.getenv("TAMABAKO_BROWSER")),
                        Optional.of("/usr/bin/chromium"))
                .flatMap(Optional::stream)
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() ->
                        new IllegalStateException(
                                "The browser tests need Chromium. Install the package"
                                        + " chromium, or set TAMABAKO_BROWSER to the path"
                                        + " of one."));
    }

    @Override
    public void close() {
        playwright.close();
    }
}
