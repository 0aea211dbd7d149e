package tamabako.desk.account;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.desk.web.Access;
import tamabako.desk.web.Moment;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Who;
import tamabako.records.ClassBook;
import tamabako.records.SignIn;
import tamabako.records.Teacher;

/// One's own account: the password, and where one is signed in. Both ask for the password first.
final class OwnPages implements Routes {

    private static final Logger LOG = LoggerFactory.getLogger(OwnPages.class);

    private final ClassBook book;
    private final AccountDoor door;
    private final NewPassword choosing;
    private final ZoneId zone;

    OwnPages(ClassBook book, AccountDoor door, NewPassword choosing, ZoneId zone) {
        this.book = book;
        this.door = door;
        this.choosing = choosing;
        this.zone = zone;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/password", this::show).forWhom(Access.ASSISTANT),
                Route.post("/password", this::change).forWhom(Access.ASSISTANT),
                Route.post("/sign-ins", this::end).forWhom(Access.ASSISTANT));
    }

    private Reply show(Request request) {
        return switch (request.who()) {
            case Who.SignedIn me -> page(200, me, request, Map.of());
            case Who.AtThisComputer _, Who.Nobody _ -> Reply.seeOther("/accounts");
        };
    }

    private Reply page(int status, Who.SignedIn me, Request request, Map<String, String> faults) {
        List<OwnView.Place> places =
                book.signIns().of(me.id()).stream().map(one -> place(one, me, request)).toList();
        return new Reply.Page(
                status,
                "account/own.jte",
                Map.of("own", new OwnView(me.name(), me.may(Access.OWNER), places, faults)));
    }

    private OwnView.Place place(SignIn one, Who.SignedIn me, Request request) {
        Moment moment = new Moment(zone);
        return new OwnView.Place(
                one.id(),
                one.address(),
                moment.say(one.begunAt(), request.words().language()),
                moment.say(one.seenAt(), request.words().language()),
                one.id().equals(me.signIn()));
    }

    private Reply change(Request request) {
        return withPassword(
                request,
                "old",
                me -> {
                    String password = request.form().text("password");
                    Optional<String> fault = choosing.fault(password, me.name(), request.words());
                    if (fault.isPresent()) {
                        return page(400, me, request, Map.of("password", fault.get()));
                    }
                    choosing.change(me.id(), password);
                    LOG.info("{} changed the password.", me.id());
                    return again(me, request);
                });
    }

    private Reply end(Request request) {
        return withPassword(
                request,
                "confirm",
                me -> {
                    String which = request.form().text("which");
                    if (which.equals("all")) {
                        book.signIns().endAll(me.id());
                        LOG.info("{} signed out everywhere.", me.id());
                        return again(me, request);
                    }
                    book.signIns().of(me.id()).stream()
                            .filter(one -> one.id().equals(which))
                            .forEach(one -> book.signIns().end(one.id()));
                    return Reply.seeOther("/password");
                });
    }

    /// Signs in here again, with another token.
    private Reply again(Who.SignedIn me, Request request) {
        Teacher teacher = book.teachers().find(me.id()).orElseThrow();
        Token token = door.signingIn().begin(teacher, request.caller());
        return SignInPages.in(token, request.caller(), "/password?done=yes");
    }

    private interface Doing {
        Reply now(Who.SignedIn me);
    }

    /// Does it where the password in that field is right.
    private Reply withPassword(Request request, String field, Doing doing) {
        if (!(request.who() instanceof Who.SignedIn me)) {
            return Reply.seeOther("/accounts");
        }
        String typed = request.form().text(field);
        return switch (door.signingIn().attempt(me.name(), typed, request.caller())) {
            case SigningIn.Tried.Right _ -> doing.now(me);
            case SigningIn.Tried.Wait wait -> Waiting.page(wait.rest());
            case SigningIn.Tried.Wrong _, SigningIn.Tried.ToChoose _ ->
                    page(403, me, request, Map.of(field, request.words().say("own.wrong")));
        };
    }
}
