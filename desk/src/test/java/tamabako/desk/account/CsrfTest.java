package tamabako.desk.account;

import static org.assertj.core.api.Assertions.assertThat;
import static tamabako.desk.account.GuardedDesk.MORI;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// Pages of other sites cannot do anything in the name of someone who is signed in.
///
/// Items V3.5.1 and V3.5.3 of OWASP ASVS 5.0.0.
class CsrfTest {

    @TempDir private Path folder;
    private GuardedDesk desk;
    private Visit mori;

    @BeforeEach
    void open() {
        desk = GuardedDesk.withThree(folder);
        mori = desk.visit(MORI);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private int erase(String header, String value) {
        return mori.postWith(header, value, "/erase", "what", "all").statusCode();
    }

    @Test
    void aFormFromTheDesksOwnPageIsTaken() {
        assertThat(mori.post("/erase", "what", "all").statusCode()).isEqualTo(200);
        assertThat(erase("Sec-Fetch-Site", "same-origin")).isEqualTo(200);
    }

    @Test
    void aFormFromAnotherSiteOrAnotherPortIsRefused() {
        assertThat(erase("Origin", "https://elsewhere.example")).isEqualTo(403);
        assertThat(erase("Origin", "http://localhost:1")).isEqualTo(403);
        assertThat(erase("Origin", "null")).isEqualTo(403);
        assertThat(erase("Origin", "")).isEqualTo(403);
        assertThat(erase("Sec-Fetch-Site", "cross-site")).isEqualTo(403);
        assertThat(erase("Sec-Fetch-Site", "same-site")).isEqualTo(403);
    }

    @Test
    void aFormThatDoesNotTellWhereItComesFromDoesNothingInSomeonesName() {
        assertThat(mori.postFromNowhere("/erase", "what", "all").statusCode()).isEqualTo(403);
    }

    @Test
    void anotherSiteCannotSignABrowserInOrOut() {
        assertThat(mori.postWith("Origin", "https://elsewhere.example", "/sign-out").statusCode())
                .isEqualTo(403);
        assertThat(desk.book.signIns().of("MORI")).hasSize(1);
        assertThat(
                        desk.visit()
                                .postWith(
                                        "Origin",
                                        "https://elsewhere.example",
                                        "/sign-in",
                                        "name",
                                        "Mori",
                                        "password",
                                        GuardedDesk.PASSWORD)
                                .statusCode())
                .isEqualTo(403);
    }

    @Test
    void whatChangesSomethingIsNoPageToLookAt() {
        for (String path :
                new String[] {"/erase", "/sign-out", "/sign-ins", "/accounts/KUDO/shut"}) {
            assertThat(mori.get(path).statusCode()).as(path).isEqualTo(405);
        }
    }

    @Test
    void pagesTellTheDeskItselfWhereTheyAreAndNobodyElse() {
        assertThat(mori.get("/password").headers().firstValue("Referrer-Policy"))
                .hasValue("same-origin");
        assertThat(mori.get("/password").headers().firstValue("Access-Control-Allow-Origin"))
                .isEmpty();
    }
}
