package tamabako.desk.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// Rosters in, lists out, backup and restore, as a teacher does it on the page.
class KeepingWalkTest {

    @RegisterExtension static final WalkedDesk desk = new WalkedDesk();

    /// A book that holds nothing but the demo class makes room without being asked.
    @BeforeAll
    static void begin() {
        desk.book().groups().keep(Group.of("Beginners"));
    }

    private static Path file(String name, String text, String charset) throws IOException {
        return Files.writeString(desk.folder().resolve(name), text, Charset.forName(charset));
    }

    @InEveryWindow
    void aRosterIsLookedAtAndWritten(String language, int width) throws IOException {
        String group = "火曜" + language + width;
        Path roster =
                file(
                        language + width + ".csv",
                        "氏名,ふりがな,組,生年,電話\n葵,あおい,G,平成29年,1\n弁,べん,G,20x7,\n絵美,えみ,G,2016,\n=1+1,,G,,\n"
                                .replace("G", group),
                        "windows-31j");
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/book");
        page.locator("a[href='/book/keeping']").click();
        scene.look("keeping");
        page.locator("#roster-file").setInputFiles(roster);
        page.locator("form[action='/book/keeping/roster'] button").click();

        assertThat(page.locator(".flaws li")).hasCount(1);
        assertThat(page.locator(".flaws li")).containsText("20x7");
        assertThat(page.locator("section:has(> #added) tbody tr")).hasCount(3);
        assertThat(page.locator("section:has(> #notices) li").first()).containsText("電話");
        assertThat(desk.book().groups().all()).noneMatch(one -> one.name().equals(group));
        scene.look("roster-plan");
        page.locator("form[action$='/write'] button").click();

        assertThat(page.locator(".done")).isVisible();
        scene.look("roster-done");
        assertThat(desk.book().groups().all()).anyMatch(one -> one.name().equals(group));

        Path changed =
                file(
                        language + width + "-again.csv",
                        "name,group,born,grade\n葵,G,2018,6級\n絵美,G,2016,\n".replace("G", group),
                        "UTF-8");
        page.locator("#roster-file").setInputFiles(changed);
        page.locator("form[action='/book/keeping/roster'] button").click();
        Locator change = page.locator("section:has(> #changed) tbody tr");
        assertThat(change).hasCount(1);
        assertThat(change).containsText(Pattern.compile("2017 (->|→) 2018"));
        scene.look("roster-changes");

        scene.open("/book/keeping");
        page.locator("#roster-file")
                .setInputFiles(file(language + width + ".txt", "Dear parents,", "UTF-8"));
        page.locator("form[action='/book/keeping/roster'] button").click();
        assertThat(page.locator(".trouble")).isVisible();
        scene.look("roster-unread");
    }

    @ParameterizedTest
    @CsvSource({"en,1024", "ja,390"})
    void aBackupIsMadeAndRestored(String language, int width) throws IOException {
        Scene scene = desk.scene(language, width);
        Page page = scene.page();
        scene.open("/book/keeping");
        page.locator("#passphrase").fill("harbour lamp and kettle");
        page.locator("#again").fill("harbour lamp");
        page.locator("form[action$='/backup'] button").click();
        assertThat(page.locator("#backup-fault")).not().isEmpty();
        scene.look("backup-not-twice");

        page.locator("#passphrase").fill("harbour lamp and kettle");
        page.locator("#again").fill("harbour lamp and kettle");
        Download download =
                page.waitForDownload(() -> page.locator("form[action$='/backup'] button").click());
        assertThat(download.suggestedFilename()).matches("class-book-\\d{4}-\\d\\d-\\d\\d.backup");
        Path backup = desk.folder().resolve(language + ".backup");
        download.saveAs(backup);
        var pupils = desk.book().pupils().all();
        desk.book().pupils().erase(pupils.getFirst().id());

        restore(page, backup, "harbour lamp and kettle", false);
        assertThat(page.locator("#restore-fault")).not().isEmpty();
        scene.look("restore-not-empty");
        restore(page, backup, "harbour lamp and teapot", true);
        assertThat(page.locator("#restore-fault")).not().isEmpty();
        assertThat(desk.book().pupils().all()).hasSize(pupils.size() - 1);
        restore(page, backup, "harbour lamp and kettle", true);
        assertThat(page.locator(".done")).isVisible();
        scene.look("restored");
        assertThat(desk.book().pupils().all()).isEqualTo(pupils);
    }

    private static void restore(Page page, Path backup, String passphrase, boolean replace) {
        page.locator("#backup-file").setInputFiles(backup);
        page.locator("#open-with").fill(passphrase);
        page.locator("input[name=replace]").setChecked(replace);
        page.locator("form[action$='/restore'] button").click();
    }

    @Test
    void listsAreDownloadedAndComeInAgainWithoutAChange() throws IOException {
        Scene scene = desk.scene("ja", 1024);
        Page page = scene.page();
        scene.open("/book/keeping");
        Download download =
                page.waitForDownload(
                        () -> page.locator("a[href='/book/keeping/pupils.xlsx']").click());
        Path list = desk.folder().resolve("pupils.xlsx");
        download.saveAs(list);
        page.locator("#roster-file").setInputFiles(list);
        page.locator("form[action='/book/keeping/roster'] button").click();
        assertThat(page.locator(".figures li").nth(3))
                .containsText(String.valueOf(desk.book().pupils().all().size()));
        assertThat(page.locator("form[action$='/write'] button")).hasCount(0);
        scene.look("roster-same");
        assertThat(desk.book().pupils().all()).extracting(Pupil::name).contains("Aoi");
    }
}
