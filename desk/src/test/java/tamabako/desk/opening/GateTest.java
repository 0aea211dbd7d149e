package tamabako.desk.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.account.AccountDoor;
import tamabako.desk.account.Visit;
import tamabako.desk.web.Access;
import tamabako.desk.web.Route;
import tamabako.desk.web.Verb;
import tamabako.records.Account;
import tamabako.records.Identity;
import tamabako.records.SignIn;
import tamabako.records.Teacher;

/// Every address of the desk, and whom it lets in: the table is `src/test/vectors/routes.txt`. An
/// address that is not in it fails here.
///
/// Items V8.2.1 and V8.3.1 of OWASP ASVS 5.0.0.
class GateTest {

    private static final Path TABLE = Path.of("src/test/vectors/routes.txt");

    @TempDir private static Path folder;

    private static OpenDesk desk;

    @BeforeAll
    static void open() {
        desk = OpenDesk.guarded(folder, false, InetAddress.getLoopbackAddress(), 0);
        for (Teacher.Role role : Teacher.Role.values()) {
            Teacher teacher = new Teacher(role.name(), role.name(), role, false);
            desk.book().teachers().keep(teacher);
            desk.book().accounts().keep(Account.withPassword(teacher, "no hash"));
        }
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    private static Map<String, Access> table() throws IOException {
        Map<String, Access> table = new TreeMap<>();
        for (String line : Files.readAllLines(TABLE)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] parts = line.strip().split("\\s+");
                table.put(parts[0] + " " + parts[1], Access.valueOf(parts[2]));
            }
        }
        return table;
    }

    private static String name(Route route) {
        return route.verb() + " " + route.address();
    }

    @Test
    void everyAddressStandsInTheTableWithWhomItIsFor() throws IOException {
        Map<String, Access> are = new TreeMap<>();
        desk.routes().forEach(route -> are.put(name(route), route.access()));
        assertThat(are).as("src/test/vectors/routes.txt").isEqualTo(table());
    }

    @Test
    void everyAddressLetsInWhomItIsForAndNobodyElse() throws IOException {
        Map<String, Access> table = table();
        List<String> wrong = new ArrayList<>();
        for (Route route : desk.routes()) {
            Access wanted = Optional.ofNullable(table.get(name(route))).orElse(Access.OWNER);
            for (Access who :
                    List.of(Access.PUPIL, Access.ASSISTANT, Access.TEACHER, Access.OWNER)) {
                boolean isIn = !isTurnedAway(route, who);
                if (isIn != who.suffices(wanted)) {
                    wrong.add(who + (isIn ? " came in at " : " was refused at ") + name(route));
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    /// Whether the door keeps them out: it sends them to sign in, or says that they are not.
    private static boolean isTurnedAway(Route route, Access who) {
        Visit visit = visit(who);
        String path = route.address().replaceAll("\\{[a-z]+}", "NONE");
        HttpResponse<String> reply = route.verb() == Verb.GET ? visit.get(path) : visit.post(path);
        boolean toSignIn =
                Visit.next(reply).startsWith("/sign-in")
                        && !List.of("/sign-out").contains(route.address());
        boolean refused = reply.body().contains("data-trouble=\"not-allowed\"");
        boolean signedOut = reply.body().contains("data-trouble=\"signed-out\"");
        return toSignIn || refused || signedOut;
    }

    /// A browser at which someone of that role is signed in; for pupils, nobody.
    private static Visit visit(Access who) {
        Visit visit = new Visit(desk.url());
        if (who == Access.PUPIL) {
            return visit;
        }
        String token = "token-of-" + who;
        Instant now = Instant.now();
        String id = Identity.fresh();
        desk.book()
                .signIns()
                .keep(
                        new SignIn(
                                id,
                                AccountDoor.digest(token + id),
                                who.name(),
                                "127.0.0.1",
                                now,
                                now));
        return visit.carrying("sign-in", token + id);
    }
}
