package tamabako.desk.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The language switch of the header: keeps the choice in a cookie and shows the same page again.
final class LanguageSwitch implements Routes {

    private final Languages languages;

    LanguageSwitch(Languages languages) {
        this.languages = languages;
    }

    @Override
    public List<Route> routes() {
        return List.of(Route.post("/language", this::choose).forWhom(Access.ANYONE));
    }

    private Reply choose(Request request) {
        String tag = request.form().text("to");
        Optional<Words> chosen = languages.find(tag);
        if (chosen.isEmpty()) {
            return Reply.trouble(400, "language", tag);
        }
        String cookie =
                "%s=%s; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict"
                        .formatted(Languages.COOKIE, chosen.get().tag());
        return new Reply.SeeOther(
                OwnAddress.orHome(request.form().text("back")), Map.of("Set-Cookie", cookie));
    }
}
