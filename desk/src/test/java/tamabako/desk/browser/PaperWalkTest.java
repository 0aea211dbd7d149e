package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// From the ladder to the printed forms, and back by a printed number; the ways of making a sheet;
/// templates; a ladder of the teacher's own.
class PaperWalkTest {

    private static final Pattern CUSTOMS_LEFT_OUT =
            Pattern.compile("without the customs of setters|作題の慣例なし");

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    @InEveryWindow
    void fromTheLadderToThePrintedForms(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/ladders");
        scene.look("ladders");
        page.locator("a[href='/ladders/first-steps']").click();
        page.locator("#step-11 > summary").click();
        assertThat(page.locator("#step-11 .unconfirmed").first()).isVisible();
        scene.look("ladder");

        page.locator("#step-11 a[href^='/papers']").click();
        page.locator("input[name=grade][value=step-11]").check();
        page.locator("#forms").fill("3");
        assertThat(page.locator("input[name=customs]")).isChecked();
        page.locator("input[name=customs]").uncheck();
        scene.look("papers");
        page.locator("form[action='/papers'][method=post] button").click();
        page.waitForURL(Pattern.compile("/papers/[A-Z0-9-]+$"));

        assertThat(page.locator(".report tbody tr")).hasCount(3);
        assertThat(page.locator("main")).containsText(CUSTOMS_LEFT_OUT);
        scene.look("forms");
        APIResponse pdf =
                page.request().get(page.url() + ".pdf?part=paper&part=key&language=ja&page=b4");
        assertThat(pdf.status()).isEqualTo(200);
        assertThat(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");

        APIResponse report = page.request().get(page.url() + "/report.pdf");
        assertThat(report.status()).isEqualTo(200);

        String address = page.url();
        String number = page.locator(".paper-id").nth(1).innerText();
        scene.open("/papers");
        page.locator("#find").fill(number.toLowerCase(Locale.ROOT).replace("-", " "));
        page.locator("#find").press("Enter");
        assertThat(page).hasURL(address);
        scene.open("/papers?find=" + otherwiseBegun(number));
        assertThat(page.locator("#find-note")).not().isEmpty();
        scene.look("papers-not-found");
    }

    /// The number with another first character, which its check character always gives away.
    private static String otherwiseBegun(String number) {
        return (number.startsWith("X") ? "Y" : "X") + number.substring(1);
    }

    @ParameterizedTest
    @CsvSource({"en,390", "en,1024", "ja,1024", "ja,1920"})
    void aSheetBySectionAndByTechnique(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/make?by=section");
        page.locator("#ladder").selectOption("abacus-one-sheet");
        assertThat(page.locator("#grade option[value=step-1]")).hasCount(0);
        assertThat(page.locator("#preview .problem").first()).isVisible();
        scene.look("make-section");

        scene.open("/make?by=technique");
        page.locator("input[name=learning][value=ten-with-five]").check();
        assertThat(page.locator(".chip-ten-with-five")).hasCount(10);
        scene.look("make-technique");
    }

    @Test
    void oneProblemIsExchangedInItsPlace() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open("/make?kind=quotient&divisor=2&quotient=3&seed=12");
        String second = page.locator(".problem").nth(1).innerText();
        String third = page.locator(".problem").nth(2).innerText();
        page.locator("button[name=another][value='3']").click();
        assertThat(page.locator("input[name=swaps]")).hasValue("3-1");
        assertThat(page.locator(".problem").nth(2)).not().hasText(third);
        assertThat(page.locator("button[name=another][value='3']")).isFocused();
        assertThat(page.locator(".problem").nth(1).innerText()).isEqualTo(second);
        assertThat(page.url()).contains("swaps=3-1").contains("seed=12").doesNotContain("another");
        String exchanged = page.locator(".problem").nth(2).innerText();
        page.reload();
        assertThat(page.locator(".problem").nth(2).innerText()).isEqualTo(exchanged);
    }

    @Test
    void aTemplateIsKeptOpenedAndRemoved() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open("/make?kind=product&multiplicand=3&multiplier=2&count=4&seed=1");
        page.locator(".keep-template summary").click();
        page.locator("#template").fill("Products & more");
        scene.look("template");
        page.locator("button[formaction='/templates']").click();
        assertThat(page).hasURL(Pattern.compile("/make\\?.*multiplicand=3"));

        scene.open("/make");
        page.locator(".templates summary").click();
        scene.look("templates");
        page.locator(".templates a").first().click();
        assertThat(page.locator("#multiplicand")).hasValue("3");
        assertThat(page.locator("#preview .problem")).hasCount(4);
        page.locator(".templates summary").click();
        page.locator(".templates button").click();
        assertThat(page.locator(".templates")).hasCount(0);
    }

    @ParameterizedTest
    @CsvSource({"en,390", "ja,1024"})
    void aLadderOfOnesOwnIsMendedByItsLines(String language, int width) {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/own-ladder?from=first-steps");
        String text = page.locator("#yaml").inputValue();
        page.locator("#yaml").fill(text.replaceFirst("count: 10", "coutn: 10"));
        page.locator(".own-ladder button").click();
        assertThat(page.locator(".mistakes li").first()).containsText("coutn");
        scene.look("own-ladder-mistaken");

        page.locator("#yaml").fill(text);
        page.locator(".own-ladder button").click();
        assertThat(page.locator(".mistakes li")).hasCount(1);

        String name = "own-" + language;
        page.locator("#yaml").fill(text.replace("ladder: first-steps", "ladder: " + name));
        page.locator(".own-ladder button").click();
        assertThat(page).hasURL(Pattern.compile("/ladders/" + name + "$"));
        scene.look("own-ladder");
        page.locator("form[action$='/remove'] button").click();
        assertThat(page.locator("a[href='/ladders/" + name + "']")).hasCount(0);
    }

    @Test
    void moreFormsThanThereAreProblemsForAreRefusedWithTheReason() {
        Scene scene = desk.scene("en", 1024);
        Page page = scene.page();
        scene.open("/papers?ladder=first-steps&grade=step-2");
        page.locator("#forms").fill("20");
        page.locator("form[action='/papers'][method=post] button").click();
        assertThat(page.locator("#forms-note"))
                .containsText(
                        Pattern.compile(
                                "different problems for \\d+ forms only.* Ask for \\d+ forms"));
        assertThat(page.locator("input[name=grade][value=step-2]")).isChecked();
        scene.look("too-many-forms");
    }
}
