package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.desk.opening.OpenDesk;

/// The first start, accounts, and signing in and out, as an owner and an assistant do it.
class SignInWalkTest {

    private static final String PASSWORD = "harbour kingfisher ladder";

    @TempDir private static Path folder;

    @RegisterExtension static final Windows windows = new Windows();

    private static OpenDesk desk(String name, InetAddress address) throws IOException {
        Path place = Files.createDirectory(folder.resolve(name));
        return windows.keep(OpenDesk.guarded(place, false, address, 0));
    }

    @ParameterizedTest
    @CsvSource({"en,390", "en,1024", "ja,390", "ja,1024"})
    void anOwnerAndAnAssistantComeInAndGoOut(String language, int width) throws IOException {
        InetAddress here = InetAddress.getLoopbackAddress();
        OpenDesk desk = desk(language + width, here);
        Scene owner = windows.at(desk.url(), language, width);
        Scene assistant = windows.at(desk.url(), language, width);
        becomeOwner(owner);
        String code = addAssistant(owner);
        chooseAPassword(assistant, code);
        signOutAndIn(owner);
    }

    private static void becomeOwner(Scene owner) {
        Page page = owner.page();
        owner.open("/make");
        assertThat(page.locator("nav")).hasCount(0);
        assertThat(page.locator("form[action='/first/without']")).isVisible();
        owner.look("first");
        page.locator("#name").fill("Mori");
        page.locator("#password").fill("soroban1");
        page.locator("#password").press("Enter");
        assertThat(page.locator("#password")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#name")).hasValue("Mori");
        owner.look("first-weak");

        page.locator("#password").fill(PASSWORD);
        page.locator("[data-shows=password]").click();
        assertThat(page.locator("#password")).hasAttribute("type", "text");
        page.locator("form[action='/first'] button:not([type])").click();
        assertThat(page.locator(".who a")).hasText("Mori");
        owner.look("desk-signed-in");
    }

    private static String addAssistant(Scene owner) {
        Page page = owner.page();
        owner.goByMenu(".who a");
        owner.look("own");
        page.locator("a[href='/accounts']").click();
        page.locator("#name").fill("Kudo");
        page.locator("input[value=assistant]").check();
        page.locator("form[action='/accounts'] button").click();
        Locator code = page.locator(".code");
        assertThat(code).isVisible();
        owner.look("code");
        String given = code.innerText();
        page.locator("main a[href='/accounts']").click();
        assertThat(page.locator(".people > li")).hasCount(2);
        owner.look("accounts");
        return given;
    }

    private static void chooseAPassword(Scene assistant, String code) {
        Page page = assistant.page();
        assistant.open("/marked/NONE");
        assertThat(page.locator("main input[name=back]")).hasValue("/marked/NONE");
        assistant.look("sign-in");
        page.locator("#name").fill("Kudo");
        page.locator("#password").fill(code);
        page.locator("form[action='/sign-in'] button:not([type])").click();
        assertThat(page.locator("form[action='/welcome']")).isVisible();
        assistant.look("welcome");
        page.locator("#password").fill("orchard velvet tunnel");
        page.locator("#password").press("Enter");
        assertThat(page.locator(".who a")).hasText("Kudo");

        assistant.open("/accounts");
        assertThat(page.locator("[data-trouble=not-allowed]")).isVisible();
        assistant.look("not-allowed");
    }

    private static void signOutAndIn(Scene owner) {
        Page page = owner.page();
        owner.goByMenu(".who form button");
        assertThat(page.locator("form[action='/sign-in']")).isVisible();
        page.goBack();
        assertThat(page.locator("form[action='/sign-in']")).isVisible();
        page.locator("#name").fill("Mori");
        page.locator("#password").fill("harbour kingfisher");
        page.locator("#password").press("Enter");
        assertThat(page.locator("#name")).hasAttribute("aria-invalid", "true");
        owner.look("sign-in-wrong");
        page.locator("#password").fill(PASSWORD);
        page.locator("#password").press("Enter");
        assertThat(page.locator(".who a")).hasText("Mori");
    }

    @ParameterizedTest
    @CsvSource({"en,1024", "ja,390"})
    void theDemoIsLookedAtWithoutAPassword(String language, int width) throws IOException {
        InetAddress here = InetAddress.getLoopbackAddress();
        Scene scene = windows.at(desk("demo" + language, here).url(), language, width);
        Page page = scene.page();
        scene.open("/");
        page.locator("form[action='/first/without'] button").click();
        assertThat(page.locator(".demo").first()).isVisible();
        scene.look("desk-without-password");
        scene.goByMenu(".who a");
        assertThat(page.locator("main a[href='/first']")).isVisible();
        scene.look("accounts-without-password");
        page.locator("main a[href='/first']").click();
        assertThat(page.locator("form[action='/first/without']")).hasCount(0);
        scene.look("set-a-password");
    }

    /// Browsers tell less over plain HTTP from another address than from this computer's own; forms
    /// have to work there as well.
    @Test
    void overTheNetworkFormsWorkAndThePageTellsThatTheWayIsOpen() throws Exception {
        Optional<InetAddress> outside =
                NetworkInterface.networkInterfaces()
                        .flatMap(NetworkInterface::inetAddresses)
                        .filter(one -> !one.isLoopbackAddress() && one.getAddress().length == 4)
                        .findFirst();
        Assumptions.assumeTrue(outside.isPresent(), "This machine is in no network.");
        OpenDesk desk = desk("network", outside.orElseThrow());
        Scene scene = windows.at(desk.url(), "en", 1024);
        Page page = scene.page();
        scene.open("/");
        page.locator("#code").fill(desk.setupCode().orElseThrow());
        page.locator("#name").fill("Mori");
        page.locator("#password").fill(PASSWORD);
        page.locator("#password").press("Enter");
        assertThat(page.locator(".who a")).hasText("Mori");
        page.locator(".languages button").click();
        assertThat(page.locator("html")).hasAttribute("lang", "ja");
        scene.goByMenu(".who form button");
        assertThat(page.locator(".readable")).isVisible();
    }
}
