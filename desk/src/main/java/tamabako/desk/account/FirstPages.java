package tamabako.desk.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.desk.account.AccountDoor.Guard;
import tamabako.desk.account.AccountDoor.Reach;
import tamabako.desk.web.Access;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.Teacher;

/// The page of the first start: the desk gets an owner, or goes on without passwords on this
/// computer.
final class FirstPages implements Routes {

    private static final Logger LOG = LoggerFactory.getLogger(FirstPages.class);

    private final ClassBook book;
    private final AccountDoor door;
    private final NewPassword choosing;
    private final Throttle byAddress;

    FirstPages(ClassBook book, AccountDoor door, NewPassword choosing) {
        this.book = book;
        this.door = door;
        this.choosing = choosing;
        this.byAddress = new Throttle(door.clock(), List.of(SigningIn.A_MINUTE));
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/first", this::ask).forWhom(Access.ANYONE),
                Route.post("/first", this::becomeOwner).forWhom(Access.ANYONE),
                Route.post("/first/without", this::goOnWithout).forWhom(Access.ANYONE));
    }

    private Reply ask(Request request) {
        return book.accounts().hasOwner() ? Reply.seeOther("/") : page(200, Fields.NONE, Map.of());
    }

    private Reply page(int status, Fields form, Map<String, String> faults) {
        FirstView view =
                new FirstView(
                        form.text("name"),
                        door.setupCode().isPresent(),
                        door.guard() == Guard.NOT_YET && door.reach() == Reach.THIS_COMPUTER,
                        book.hasDemo(),
                        faults);
        return new Reply.Page(status, "account/first.jte", Map.of("first", view));
    }

    private Reply becomeOwner(Request request) {
        if (book.accounts().hasOwner()) {
            return Reply.trouble(403, "has-owner");
        }
        Optional<Duration> rest = byAddress.count(request.caller().address());
        if (door.setupCode().isPresent() && rest.isPresent()) {
            return Waiting.page(rest.get());
        }
        String name = request.form().text("name").strip();
        String password = request.form().text("password");
        Map<String, String> faults = faults(request, name, password);
        if (!faults.isEmpty()) {
            return page(400, request.form(), faults);
        }
        Teacher owner = new Teacher(Identity.fresh(), name, Teacher.Role.OWNER, false);
        choosing.keepWithAccount(owner, password);
        door.hasOwner();
        LOG.info("{} became owner from {}.", owner.id(), request.caller().address());
        Token token = door.signingIn().begin(owner, request.caller());
        return SignInPages.in(token, request.caller(), "/");
    }

    private Map<String, String> faults(Request request, String name, String password) {
        Map<String, String> faults = new TreeMap<>();
        if (!door.setupCode().map(code -> isSame(code, request.form().text("code"))).orElse(true)) {
            faults.put("code", request.words().say("first.wrong-code"));
            LOG.warn("A wrong set-up code came from {}.", request.caller().address());
        }
        PersonName.fault(name, request.words()).ifPresent(fault -> faults.put("name", fault));
        choosing.fault(password, name, request.words())
                .ifPresent(fault -> faults.put("password", fault));
        return faults;
    }

    /// Takes as long wherever they differ.
    private static boolean isSame(String code, String typed) {
        return MessageDigest.isEqual(
                code.getBytes(StandardCharsets.UTF_8),
                OneTimeCode.tidy(typed).getBytes(StandardCharsets.UTF_8));
    }

    private Reply goOnWithout(Request request) {
        if (door.guard() != Guard.NOT_YET || door.reach() != Reach.THIS_COMPUTER) {
            return Reply.trouble(403, "needs-password");
        }
        door.goOnWithout();
        LOG.info("The desk goes on without passwords, on this computer only.");
        return Reply.seeOther("/");
    }
}
