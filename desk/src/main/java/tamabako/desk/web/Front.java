package tamabako.desk.web;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.records.RecordsFailure;
import tamabako.records.RecordsWords;

/// Takes every request, and always has an answer for it: the page asked for, or one that says what
/// is wrong with the request.
final class Front {

    private static final Logger LOG = LoggerFactory.getLogger(Front.class);

    private final RouteTable table;
    private final Languages languages;
    private final Gate gate;
    private final StaticFiles files = new StaticFiles();
    private final Printer printer = new Printer();

    Front(RouteTable table, Languages languages, Gate gate) {
        this.table = table;
        this.languages = languages;
        this.gate = gate;
    }

    /// Answers a request.
    Outgoing answer(Incoming incoming) {
        try {
            return find(incoming);
        } catch (RuntimeException | StackOverflowError bug) {
            LOG.error("{} {} could not be answered.", incoming.verb(), incoming.path(), bug);
            return Printer.withoutTemplate();
        }
    }

    private Outgoing find(Incoming incoming) {
        if (!gate.isOwnHost(incoming)) {
            return trouble(incoming, 421, "host");
        }
        if (incoming.path().startsWith("/static/") && incoming.isLook()) {
            return file(incoming);
        }
        return switch (table.find(incoming.verb(), incoming.path())) {
            case RouteTable.Found.Here(Route route, Map<String, String> parts) ->
                    answer(incoming, route, parts);
            case RouteTable.Found.OtherVerb(Set<Verb> allowed) ->
                    trouble(incoming, 405, "verb").with(Map.of("Allow", methods(allowed)));
            case RouteTable.Found.Nowhere() -> trouble(incoming, 404, "nowhere");
        };
    }

    private static String methods(Set<Verb> allowed) {
        return allowed.stream()
                .map(verb -> verb == Verb.GET ? "GET, HEAD" : "POST")
                .collect(Collectors.joining(", "));
    }

    /// A page of trouble in the language of whoever sent `incoming`.
    Outgoing trouble(Incoming incoming, int status, String key, Object... values) {
        return printer.print(Reply.trouble(status, key, values), view(incoming)).thenGoodbye();
    }

    private Outgoing answer(Incoming incoming, Route route, Map<String, String> parts) {
        if (!(Fields.parse(incoming.query()) instanceof Fields.Read.Good(Fields query))) {
            return trouble(incoming, 400, "query");
        }
        if (route.verb() == Verb.GET) {
            return answer(incoming, route, parts, query, Fields.NONE);
        }
        if (!gate.isOwnForm(incoming)) {
            return trouble(incoming, 403, "origin");
        }
        return switch (FormBody.read(incoming)) {
            case FormBody.Read.Good(Fields form) -> answer(incoming, route, parts, query, form);
            case FormBody.Read.Bad(Reply.Trouble trouble) ->
                    printer.print(trouble, view(incoming)).thenGoodbye();
        };
    }

    @SuppressWarnings(
            "CatchingUnchecked") // the edge: whatever breaks behind it, the reader gets a page
    private Outgoing answer(
            Incoming incoming, Route route, Map<String, String> parts, Fields query, Fields form) {
        View view = view(incoming);
        try {
            Request request =
                    new Request(
                            route.verb(),
                            incoming.path(),
                            parts,
                            query,
                            form,
                            view.words(),
                            view.here());
            return printer.print(route.answer(request), view);
        } catch (RecordsFailure failed) {
            LOG.error("{} {} could not be answered.", route.verb(), incoming.path(), failed);
            return trouble(
                    incoming,
                    503,
                    "book",
                    RecordsWords.of(view.words().language()).say(failed.reason()));
        } catch (RuntimeException bug) {
            LOG.error("{} {} could not be answered.", route.verb(), incoming.path(), bug);
            return trouble(incoming, 500, "inside");
        }
    }

    private Outgoing file(Incoming incoming) {
        Optional<Reply.Bytes> file = files.find(incoming.path());
        if (file.isEmpty()) {
            return trouble(incoming, 404, "nowhere");
        }
        Outgoing outgoing = printer.print(file.get(), view(incoming));
        boolean unchanged =
                incoming.header("If-None-Match")
                        .equals(Optional.of(outgoing.headers().getOrDefault("ETag", "")));
        return unchanged ? new Outgoing(304, outgoing.headers(), new byte[0], false) : outgoing;
    }

    private View view(Incoming incoming) {
        Words words =
                languages.choose(
                        incoming.cookie(Languages.COOKIE), incoming.header("Accept-Language"));
        return new View(
                words, languages.all(), incoming.path(), incoming.isLook() ? incoming.here() : "/");
    }
}
