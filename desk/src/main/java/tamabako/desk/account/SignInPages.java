package tamabako.desk.account;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.account.AccountDoor.Guard;
import tamabako.desk.web.Access;
import tamabako.desk.web.Caller;
import tamabako.desk.web.OwnAddress;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Who;
import tamabako.records.Teacher;

/// Signing in and out, and choosing the first password with a one-time code.
final class SignInPages implements Routes {

    private final AccountDoor door;
    private final NewPassword choosing;

    SignInPages(AccountDoor door, NewPassword choosing) {
        this.door = door;
        this.choosing = choosing;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/sign-in", this::ask).forWhom(Access.ANYONE),
                Route.post("/sign-in", this::signIn).forWhom(Access.ANYONE),
                Route.post("/welcome", this::choose).forWhom(Access.ANYONE),
                Route.post("/sign-out", this::signOut).forWhom(Access.ANYONE));
    }

    private Reply ask(Request request) {
        return switch (door.guard()) {
            case Guard.NOT_YET -> Reply.seeOther("/first");
            case Guard.NONE -> Reply.seeOther("/");
            case Guard.PASSWORDS ->
                    page(200, request, "", OwnAddress.orHome(request.query().text("back")), "");
        };
    }

    private static Reply page(int status, Request request, String name, String back, String fault) {
        boolean isSecret = request.caller().encrypted() || request.caller().isThisComputer();
        return new Reply.Page(
                status,
                "account/sign-in.jte",
                Map.of("signIn", new SignInView(name, back, !isSecret, fault)));
    }

    private Reply signIn(Request request) {
        if (door.guard() != Guard.PASSWORDS) {
            return Reply.seeOther("/");
        }
        String name = request.form().text("name");
        String back = OwnAddress.orHome(request.form().text("back"));
        String password = request.form().text("password");
        return switch (door.signingIn().attempt(name, password, request.caller())) {
            case SigningIn.Tried.Right(Teacher teacher) -> in(teacher, request, back);
            case SigningIn.Tried.ToChoose(Teacher teacher) ->
                    welcome(200, teacher.name(), OneTimeCode.tidy(password), "");
            case SigningIn.Tried.Wrong _ ->
                    page(403, request, name, back, request.words().say("sign-in.wrong"));
            case SigningIn.Tried.Wait wait -> Waiting.page(wait.rest());
        };
    }

    private static Reply welcome(int status, String name, String code, String fault) {
        return new Reply.Page(
                status,
                "account/welcome.jte",
                Map.of("welcome", new WelcomeView(name, code, fault)));
    }

    private Reply choose(Request request) {
        if (door.guard() != Guard.PASSWORDS) {
            return Reply.seeOther("/");
        }
        String name = request.form().text("name");
        String code = request.form().text("code");
        String password = request.form().text("password");
        return switch (door.signingIn().attempt(name, code, request.caller())) {
            case SigningIn.Tried.ToChoose(Teacher teacher) -> {
                Optional<String> fault =
                        OneTimeCode.tidy(password).equals(OneTimeCode.tidy(code))
                                ? Optional.of(request.words().say("weak.code"))
                                : choosing.fault(password, teacher.name(), request.words());
                if (fault.isPresent()) {
                    yield welcome(400, teacher.name(), code, fault.get());
                }
                choosing.change(teacher.id(), password);
                yield in(teacher, request, "/");
            }
            case SigningIn.Tried.Right _, SigningIn.Tried.Wrong _ ->
                    page(403, request, name, "/", request.words().say("sign-in.wrong"));
            case SigningIn.Tried.Wait wait -> Waiting.page(wait.rest());
        };
    }

    private Reply in(Teacher teacher, Request request, String back) {
        Token token = door.signingIn().begin(teacher, request.caller());
        return in(token, request.caller(), back);
    }

    /// Gives a browser its token and shows it `address`.
    static Reply in(Token token, Caller caller, String address) {
        return new Reply.SeeOther(address, Map.of("Set-Cookie", SignInCookie.give(token, caller)));
    }

    private Reply signOut(Request request) {
        door.signingIn().end(request.caller());
        String next = request.who() instanceof Who.AtThisComputer ? "/" : "/sign-in";
        return new Reply.SeeOther(next, Map.of("Set-Cookie", SignInCookie.take(request.caller())));
    }
}
