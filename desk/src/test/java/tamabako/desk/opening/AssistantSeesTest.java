package tamabako.desk.opening;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

/// Whoever helps at lessons walks through the whole desk of the demo class, link by link, and finds
/// no button that would be refused.
class AssistantSeesTest {

    private static final Pattern TAG = Pattern.compile("<(a|form|button|input)\\b[^>]*>");
    private static final Pattern WHERE =
            Pattern.compile("\\b(?:href|action|formaction)=\"([^\"#]*)");

    /// How many pages of one address are looked at.
    private static final int OF_EACH = 3;

    @TempDir private Path folder;

    private final Set<String> refused = new TreeSet<>();
    private final Map<String, Integer> looked = new HashMap<>();
    private final Deque<String> ahead = new ArrayDeque<>();
    private final Set<String> known = new HashSet<>();

    @Test
    void noButtonThatWouldBeRefusedIsShown() {
        try (OpenDesk desk = OpenDesk.guarded(folder, true, InetAddress.getLoopbackAddress(), 0)) {
            Visit visit = assistant(desk);
            meet("/");
            while (!ahead.isEmpty()) {
                String page = ahead.poll();
                HttpResponse<String> reply = visit.get(page);
                if (reply.headers().firstValue("Content-Type").orElse("").startsWith("text/html")) {
                    look(desk, page, reply.body());
                }
            }
        }
        assertThat(looked).containsKeys("/book/pupils/{id}", "/sheets/{id}", "/marked/{id}");
        assertThat(refused).isEmpty();
    }

    private void look(OpenDesk desk, String page, String html) {
        Matcher tags = TAG.matcher(html);
        while (tags.find()) {
            String tag = tags.group();
            Matcher where = WHERE.matcher(tag);
            if (where.find() && where.group(1).startsWith("/")) {
                String address = where.group(1).replace("&amp;", "&");
                boolean sends = tag.contains("method=\"post\"");
                Verb verb = sends ? Verb.POST : Verb.GET;
                route(desk, verb, address).ifPresent(route -> meet(route, page, address));
            }
        }
    }

    private static Optional<Route> route(OpenDesk desk, Verb verb, String address) {
        String path = address.split("\\?", 2)[0];
        return desk.routes().stream()
                .filter(route -> route.verb() == verb && route.match(path).isPresent())
                .findFirst();
    }

    private void meet(Route route, String page, String address) {
        if (!Access.ASSISTANT.suffices(route.access())) {
            refused.add("%s %s on %s".formatted(route.verb(), address, page));
        } else if (route.verb() == Verb.GET
                && looked.merge(route.address(), 1, Integer::sum) <= OF_EACH) {
            meet(address);
        }
    }

    private void meet(String address) {
        if (known.add(address)) {
            ahead.add(address);
        }
    }

    private static Visit assistant(OpenDesk desk) {
        Teacher teacher = new Teacher("helper", "Nao", Teacher.Role.ASSISTANT, false);
        Teacher owner = new Teacher("owner", "Owner", Teacher.Role.OWNER, false);
        for (Teacher one : List.of(owner, teacher)) {
            desk.book().teachers().keep(one);
            desk.book().accounts().keep(Account.withPassword(one, "no hash"));
        }
        String id = Identity.fresh();
        Instant now = Instant.now();
        String token = "token" + id;
        desk.book()
                .signIns()
                .keep(new SignIn(id, AccountDoor.digest(token), "helper", "127.0.0.1", now, now));
        return new Visit(desk.url()).carrying("sign-in", token);
    }
}
