package tamabako.desk.work;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.net.InetAddress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tamabako.desk.web.DeskServer;
import tamabako.desk.web.Routes;

/// A real browser before a real desk. The browser is the machine's Chromium; another is named by
/// the environment variable `CHROMIUM`.
final class Browser implements AutoCloseable {

    private static final List<String> QUIET =
            List.of(
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync");

    private final DeskServer desk;
    private final Playwright playwright;
    private final com.microsoft.playwright.Browser browser;
    private final List<String> faults = new ArrayList<>();

    private Browser(DeskServer desk, Playwright playwright) {
        this.desk = desk;
        this.playwright = playwright;
        String chromium = System.getenv().getOrDefault("CHROMIUM", "/usr/bin/chromium");
        this.browser =
                playwright
                        .chromium()
                        .launch(
                                new BrowserType.LaunchOptions()
                                        .setExecutablePath(Path.of(chromium))
                                        .setArgs(QUIET));
    }

    static Browser open(Routes pages) {
        DeskServer desk = DeskServer.start(InetAddress.getLoopbackAddress(), 0, List.of(pages));
        var options =
                new Playwright.CreateOptions()
                        .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1"));
        return new Browser(desk, Playwright.create(options));
    }

    /// A page at `path`, in a window of so many pixels, without motion.
    Page at(String path, int width, int height, String language) {
        BrowserContext context =
                browser.newContext(
                        new com.microsoft.playwright.Browser.NewContextOptions()
                                .setViewportSize(width, height)
                                .setLocale(language)
                                .setHasTouch(true)
                                .setReducedMotion(
                                        com.microsoft.playwright.options.ReducedMotion.REDUCE));
        Page page = context.newPage();
        page.onPageError(faults::add);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                faults.add(message.text());
            }
        });
        page.navigate(desk.url() + path.substring(1));
        return page;
    }

    /// What went wrong on the pages so far: script errors and refused resources.
    List<String> faults() {
        return List.copyOf(faults);
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
        desk.close();
    }
}
