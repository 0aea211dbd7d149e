package tamabako.desk.account;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.desk.web.Access;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.Account;
import tamabako.records.ClassBook;
import tamabako.records.Identity;
import tamabako.records.Teacher;

/// The owner's page of accounts: teachers and assistants come, get one-time codes, and go.
///
/// The owner never knows another's password: a new account and one whose password was forgotten get
/// a one-time code, with which its holder chooses one.
final class PeoplePages implements Routes {

    private static final Logger LOG = LoggerFactory.getLogger(PeoplePages.class);

    private final ClassBook book;
    private final AccountDoor door;
    private final InstantSource clock;

    PeoplePages(ClassBook book, AccountDoor door, InstantSource clock) {
        this.book = book;
        this.door = door;
        this.clock = clock;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                        Route.get("/accounts", request -> page(200, "", "")),
                        Route.post("/accounts", this::add),
                        Route.post("/accounts/{id}/code", this::giveCode),
                        Route.post("/accounts/{id}/role", this::changeRole),
                        Route.post("/accounts/{id}/shut", request -> shut(request, true)),
                        Route.post("/accounts/{id}/open", request -> shut(request, false)),
                        Route.post("/accounts/{id}/sign-out", this::signOut))
                .stream()
                .map(route -> route.forWhom(Access.OWNER))
                .toList();
    }

    private Reply page(int status, String name, String fault) {
        List<PeopleView.Person> people = book.teachers().all().stream().map(this::person).toList();
        PeopleView view = new PeopleView(book.accounts().hasOwner(), people, name, fault);
        return new Reply.Page(status, "account/people.jte", Map.of("people", view));
    }

    private PeopleView.Person person(Teacher teacher) {
        Optional<Account> account = book.accounts().find(teacher.id());
        return new PeopleView.Person(
                teacher.id(),
                teacher.name(),
                teacher.role(),
                account.map(this::state).orElse(PeopleView.State.NONE),
                book.signIns().of(teacher.id()).size());
    }

    private PeopleView.State state(Account account) {
        if (account.disabled()) {
            return PeopleView.State.SHUT;
        }
        return account.codeUntil()
                .map(until ->
                        until.isAfter(clock.instant())
                                ? PeopleView.State.WAITS
                                : PeopleView.State.TOO_LATE)
                .orElse(PeopleView.State.OPEN);
    }

    private Reply add(Request request) {
        if (!book.accounts().hasOwner()) {
            return Reply.seeOther("/first");
        }
        String name = request.form().text("name").strip();
        Optional<Teacher.Role> role = role(request);
        if (role.isEmpty()) {
            return Reply.trouble(400, "no-role");
        }
        Optional<String> fault = PersonName.fault(name, request.words());
        if (fault.isEmpty() && book.accounts().named(name).isPresent()) {
            fault = Optional.of(request.words().say("name.taken", name));
        }
        return fault.map(told -> page(400, name, told))
                .orElseGet(() -> code(new Teacher(Identity.fresh(), name, role.get(), false)));
    }

    private static Optional<Teacher.Role> role(Request request) {
        return switch (request.form().text("role")) {
            case "teacher" -> Optional.of(Teacher.Role.TEACHER);
            case "assistant" -> Optional.of(Teacher.Role.ASSISTANT);
            default -> Optional.empty();
        };
    }

    /// Gives a code in place of the password, and shows it this once.
    private Reply code(Teacher teacher) {
        String code = OneTimeCode.fresh();
        Instant until = clock.instant().plus(OneTimeCode.COUNTS);
        String hash = door.passwords().hash(code);
        Account account =
                book.accounts()
                        .find(teacher.id())
                        .map(old -> old.with(hash, until))
                        .orElseGet(() -> Account.withCode(teacher, hash, until));
        book.whole(() -> {
            book.teachers().keep(teacher);
            book.accounts().keep(account);
            book.signIns().endAll(teacher.id());
        });
        LOG.info("{} got a one-time code.", teacher.id());
        return Reply.page(
                "account/code.jte",
                Map.of("given", new CodeView(teacher.name(), code, OneTimeCode.COUNTS.toDays())));
    }

    private Reply giveCode(Request request) {
        return toOther(request, this::code);
    }

    private Reply changeRole(Request request) {
        Optional<Teacher.Role> role = role(request);
        if (role.isEmpty()) {
            return Reply.trouble(400, "no-role");
        }
        return toOther(
                request,
                teacher -> {
                    book.teachers()
                            .keep(
                                    new Teacher(
                                            teacher.id(),
                                            teacher.name(),
                                            role.get(),
                                            teacher.demo()));
                    LOG.info("{} is {} now.", teacher.id(), role.get());
                    return Reply.seeOther("/accounts");
                });
    }

    private Reply shut(Request request, boolean shut) {
        return toOther(
                request,
                teacher -> {
                    book.whole(() -> {
                        book.accounts()
                                .find(teacher.id())
                                .ifPresent(one -> book.accounts().keep(one.disabled(shut)));
                        book.signIns().endAll(teacher.id());
                    });
                    LOG.info("The account of {} was {}.", teacher.id(), shut ? "shut" : "opened");
                    return Reply.seeOther("/accounts");
                });
    }

    private Reply signOut(Request request) {
        return toOther(
                request,
                teacher -> {
                    book.signIns().endAll(teacher.id());
                    LOG.info("{} was signed out everywhere.", teacher.id());
                    return Reply.seeOther("/accounts");
                });
    }

    private interface Doing {
        Reply to(Teacher teacher);
    }

    /// Does it to someone else than the owner. To the owner only where no passwords are asked for,
    /// which is the way back in after the owner's password was forgotten.
    private Reply toOther(Request request, Doing doing) {
        Optional<Teacher> teacher = book.teachers().find(request.part("id"));
        if (teacher.isEmpty()) {
            return Reply.trouble(404, "no-account");
        }
        boolean isOwner = teacher.get().role() == Teacher.Role.OWNER;
        boolean isGiveCode = request.path().endsWith("/code");
        boolean isRescue = door.guard() == AccountDoor.Guard.NONE && isGiveCode;
        return isOwner && !isRescue ? Reply.trouble(403, "not-the-owner") : doing.to(teacher.get());
    }
}
