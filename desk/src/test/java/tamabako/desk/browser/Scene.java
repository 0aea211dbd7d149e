package tamabako.desk.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ScreenshotAnimations;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// One visit to the desk: a window of one width in one language, which notes everything that goes
/// wrong in it.
final class Scene implements AutoCloseable {

    private static final Path PICTURES = Path.of("target", "screenshots");

    /// Pictures are for people: a run that nobody looks at goes without.
    private static final boolean PAINTED = !"no".equals(System.getProperty("tamabako.pictures"));

    /// Ends what moves, but for what never ends.
    private static final String SETTLE =
            """
            async () => {
              await document.fonts.ready;
              for (const moving of document.getAnimations()) {
                if (Number.isFinite(moving.effect.getComputedTiming().endTime)) moving.finish();
              }
            }
            """;

    private final String desk;
    private final String name;
    private final BrowserContext window;
    private final Page page;
    private final List<String> troubles = new ArrayList<>();
    private int pictures;

    Scene(Browser browser, String desk, String language, int width) {
        this.desk = desk;
        this.name = language + "-" + width;
        this.window =
                browser.newContext(
                        new Browser.NewContextOptions()
                                .setLocale(language)
                                .setHasTouch(width < 500)
                                .setViewportSize(width, width < 500 ? 844 : width * 9 / 16));
        this.page = window.newPage();
        page.onConsoleMessage(message -> {
            boolean isBad = List.of("error", "warning").contains(message.type());
            if (isBad && !isStatusOfThePage(message)) {
                troubles.add(message.text());
            }
        });
        page.onPageError(troubles::add);
        page.onRequest(request -> {
            if (!request.url().startsWith(desk)) {
                troubles.add("Asked for something outside the desk: " + request.url());
            }
        });
    }

    /// Browsers note the status of a page of trouble, which is as it should be.
    private boolean isStatusOfThePage(ConsoleMessage message) {
        return message.text().startsWith("Failed to load resource: the server responded")
                && message.location().startsWith(page.url());
    }

    Page page() {
        return page;
    }

    /// Opens an address of the desk.
    void open(String path) {
        page.navigate(URI.create(desk).resolve(path).toString());
    }

    /// Follows a link or presses a button of the menu, which a phone has to open first.
    void goByMenu(String link) {
        if (page.locator(".open-menu").isVisible()) {
            page.locator(".open-menu").click();
        }
        page.locator(".menu " + link).click();
    }

    /// Looks at the page as it stands, once nothing moves of itself: the accessibility checker must
    /// find nothing, and nothing may stick out at the side. The picture of a page in which
    /// something is wrong is painted, and that of any other where pictures are wanted.
    void look(String what) {
        String named = "%s-%02d-%s".formatted(name, ++pictures, what);
        page.evaluate(SETTLE);
        if (PAINTED) {
            paint(named);
        }
        assertThat(page.frames()).as("the checker looks into one frame only").hasSize(1);
        List<String> faults = new ArrayList<>(troubles);
        for (Rule rule : violations()) {
            faults.add(rule.getId() + " " + rule.getNodes().getFirst().getHtml());
        }
        Object sticksOut =
                page.evaluate(
                        "document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (!sticksOut.equals(0)) {
            faults.add("sticks out at the side by " + sticksOut);
        }
        if (!faults.isEmpty()) {
            paint(named);
        }
        assertThat(faults).as(named).isEmpty();
    }

    private void paint(String named) {
        page.screenshot(
                new Page.ScreenshotOptions()
                        .setPath(PICTURES.resolve(named + ".png"))
                        .setAnimations(ScreenshotAnimations.DISABLED)
                        .setFullPage(true));
    }

    /// What the accessibility checker finds. By its way for pages without frames it asks no second
    /// page, and by telling of faults alone it need not write down all that is right: half the
    /// time.
    private List<Rule> violations() {
        AxeBuilder checker = new AxeBuilder(page);
        checker.setLegacyMode(true);
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        checker.options(options);
        return checker.analyze().getViolations();
    }

    /// Whether this is the window of that language and width, such as `en-1024`.
    boolean isNamed(String wanted) {
        return name.equals(wanted);
    }

    /// Takes a picture of what is seen without scrolling.
    void paint(Path picture) {
        page.setViewportSize(1280, 880);
        page.screenshot(new Page.ScreenshotOptions().setPath(picture));
    }

    @Override
    public void close() {
        window.close();
    }
}
