package tamabako.bench.room;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Caller;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Languages;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Verb;
import tamabako.desk.web.Who;
import tamabako.desk.web.Words;

/// The desk's pages for a server that is not the desk's: the same functions answer.
record Pages(List<Route> routes) {

    private static final Words WORDS = Languages.of(List.of("room", "work")).english();

    /// Answers a request that came with this cookie header and this form.
    Reply answer(Verb verb, String path, String cookie, String form) {
        for (Route route : routes) {
            Optional<Map<String, String>> parts = route.match(path);
            if (route.verb() == verb && parts.isPresent()) {
                return route.answer(request(verb, path, parts.get(), cookie, form));
            }
        }
        return Reply.trouble(404, "nowhere");
    }

    private static Request request(
            Verb verb, String path, Map<String, String> parts, String cookie, String form) {
        Fields fields =
                Fields.parse(form) instanceof Fields.Read.Good(Fields read) ? read : Fields.NONE;
        return new Request(
                verb,
                path,
                parts,
                Fields.NONE,
                fields,
                WORDS,
                path,
                new Who.Nobody(),
                new Caller("127.0.0.1", false, cookies(cookie)));
    }

    private static Map<String, String> cookies(String header) {
        Map<String, String> cookies = new HashMap<>();
        for (String cookie : header.split(";", -1)) {
            int equals = cookie.indexOf('=');
            if (equals > 0) {
                cookies.put(
                        cookie.substring(0, equals).strip(), cookie.substring(equals + 1).strip());
            }
        }
        return cookies;
    }

    /// What a seat is told of a round, as the desk writes it.
    static String told(int run, String phase) {
        return "{\"run\":%d,\"phase\":\"%s\",\"worked\":0,\"limit\":-1}".formatted(run, phase);
    }
}
