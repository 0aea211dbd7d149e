package tamabako.desk.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tamabako.desk.account.GuardedDesk.PASSWORD;
import static tamabako.desk.account.Visit.next;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.account.AccountDoor.Reach;
import tamabako.records.Teacher;

/// The first start: nobody has an account, and none is there by default (OWASP ASVS 5.0.0, V6.3.2).
class FirstStartTest {

    @TempDir private Path folder;

    private GuardedDesk desk(Reach reach) {
        return new GuardedDesk(folder, reach, false);
    }

    @Test
    void everyPageLeadsToTheFirstOneUntilSomethingIsChosen() {
        try (GuardedDesk desk = desk(Reach.THIS_COMPUTER)) {
            Visit visit = desk.visit();
            for (String path : new String[] {"/", "/pupils", "/seat", "/accounts", "/sign-in"}) {
                assertThat(next(visit.get(path))).as(path).isEqualTo("/first");
            }
            assertThat(next(visit.post("/erase"))).isEqualTo("/first");
            assertThat(visit.get("/first").body())
                    .contains("With a password", "action=\"/first/without\"");
            assertThat(visit.get("/static/mark.svg").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void withAPasswordTheFirstVisitorIsOwnerAndSignedIn() {
        try (GuardedDesk desk = desk(Reach.THIS_COMPUTER)) {
            Visit visit = desk.visit();
            assertThat(visit.post("/first", "name", "", "password", PASSWORD).statusCode())
                    .isEqualTo(400);
            HttpResponse<String> weak =
                    visit.post("/first", "name", "Mori", "password", "soroban1");
            assertThat(weak.statusCode()).isEqualTo(400);
            assertThat(weak.body())
                    .contains("too easy to guess", "value=\"Mori\"")
                    .doesNotContain("soroban1");
            assertThat(desk.book.teachers().all()).isEmpty();

            HttpResponse<String> in = visit.post("/first", "name", " Mori ", "password", PASSWORD);
            assertThat(next(in)).isEqualTo("/");
            assertThat(visit.get("/").body()).contains("name=Mori, role=OWNER");
            assertThat(desk.book.teachers().all())
                    .extracting(Teacher::name, Teacher::role)
                    .containsExactly(
                            org.assertj.core.groups.Tuple.tuple("Mori", Teacher.Role.OWNER));

            Visit second = desk.visit();
            assertThat(next(second.get("/"))).isEqualTo("/sign-in");
            assertThat(next(second.get("/first"))).isEqualTo("/");
            assertThat(second.post("/first", "name", "Eve", "password", PASSWORD).statusCode())
                    .isEqualTo(403);
            assertThat(second.post("/first/without").statusCode()).isEqualTo(403);
            assertThat(desk.book.teachers().all()).hasSize(1);
        }
    }

    @Test
    void withoutAPasswordTheDeskGoesOnAlsoAfterItIsStartedAgain() {
        try (GuardedDesk desk = desk(Reach.THIS_COMPUTER)) {
            Visit visit = desk.visit();
            assertThat(next(visit.post("/first/without"))).isEqualTo("/");
            assertThat(visit.get("/pupils").body()).contains("here is AtThisComputer");
        }
        try (GuardedDesk desk = desk(Reach.THIS_COMPUTER)) {
            Visit visit = desk.visit();
            assertThat(visit.get("/pupils").body()).contains("here is AtThisComputer");
            assertThat(next(visit.get("/password"))).isEqualTo("/accounts");
            assertThat(visit.get("/accounts").body()).contains("without a password", "/first");
            assertThat(next(visit.post("/accounts", "name", "Abe", "role", "teacher")))
                    .isEqualTo("/first");

            visit.post("/first", "name", "Mori", "password", PASSWORD);
            assertThat(visit.get("/").body()).contains("role=OWNER");
            assertThat(next(desk.visit().get("/"))).isEqualTo("/sign-in");
        }
    }

    @Test
    void whereOthersReachTheDeskItsChoiceToGoWithoutPasswordsNoLongerCounts() {
        try (GuardedDesk desk = desk(Reach.THIS_COMPUTER)) {
            desk.visit().post("/first/without");
        }
        try (GuardedDesk desk = desk(Reach.NETWORK)) {
            Visit visit = desk.visit();
            assertThat(next(visit.get("/pupils"))).isEqualTo("/first");
            assertThat(next(visit.get("/seat"))).isEqualTo("/first");
            assertThat(visit.get("/first").body()).doesNotContain("/first/without");
            assertThat(visit.post("/first/without").statusCode()).isEqualTo(403);
            assertThat(next(visit.get("/pupils"))).isEqualTo("/first");
        }
    }

    @Test
    void whereOthersReachTheDeskOnlyTheSetUpCodeMakesAnOwner() {
        try (GuardedDesk desk = desk(Reach.NETWORK)) {
            String code = desk.door.setupCode().orElseThrow();
            Visit visit = desk.visit();
            String[] without = {"name", "Eve", "password", PASSWORD};
            assertThat(visit.post("/first", without).statusCode()).isEqualTo(400);
            for (int i = 0; i < 4; i++) {
                HttpResponse<String> wrong =
                        visit.post(
                                "/first",
                                "name",
                                "Eve",
                                "password",
                                PASSWORD,
                                "code",
                                OneTimeCode.fresh());
                assertThat(wrong.statusCode()).isEqualTo(400);
                assertThat(wrong.body()).contains("not the set-up code").doesNotContain(code);
            }
            String[] right = {
                "name",
                "Mori",
                "password",
                PASSWORD,
                "code",
                code.toLowerCase(java.util.Locale.ROOT)
            };
            assertThat(visit.post("/first", right).statusCode()).isEqualTo(429);
            desk.clock.goOn(Duration.ofMinutes(1));
            assertThat(visit.post("/first", right).statusCode()).isEqualTo(303);
            assertThat(visit.get("/accounts").statusCode()).isEqualTo(200);
        }
        try (GuardedDesk desk = desk(Reach.NETWORK)) {
            assertThat(desk.door.setupCode()).isEmpty();
        }
    }

    @Test
    void aRunWithoutPasswordsIsForThisComputerAndTheWayBackInForAnOwner() {
        try (GuardedDesk desk = GuardedDesk.withThree(folder)) {
            assertThat(next(desk.visit().get("/"))).isEqualTo("/sign-in");
        }
        String code;
        try (GuardedDesk desk = new GuardedDesk(folder, Reach.THIS_COMPUTER, true)) {
            Visit visit = desk.visit();
            assertThat(visit.get("/pupils").body()).contains("here is AtThisComputer");
            assertThat(visit.post("/accounts/MORI/shut").statusCode()).isEqualTo(403);
            String given = visit.post("/accounts/MORI/code").body();
            code = given.replaceFirst("(?s).*<p class=\"code\">([^<]+)<.*", "$1");
        }
        try (GuardedDesk desk = desk(Reach.THIS_COMPUTER)) {
            Visit mori = desk.visit();
            assertThat(next(mori.get("/"))).isEqualTo("/sign-in");
            mori.post("/welcome", "name", "Mori", "code", code, "password", "velvet tunnel quiet");
            assertThat(mori.get("/accounts").statusCode()).isEqualTo(200);
        }
        assertThatThrownBy(() -> new GuardedDesk(folder, Reach.NETWORK, true))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
