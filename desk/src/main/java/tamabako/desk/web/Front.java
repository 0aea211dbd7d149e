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
    private final Door door;
    private final StaticFiles files = new StaticFiles();
    private final Printer printer = new Printer();

    Front(RouteTable table, Languages languages, Gate gate, Door door) {
        this.table = table;
        this.languages = languages;
        this.gate = gate;
        this.door = door;
    }

    /// Answers a request.
    Outgoing answer(Incoming incoming) {
        try {
            return find(incoming);
        } catch (RecordsFailure failed) {
            return withoutBook(incoming, failed);
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
                    admit(incoming, route, parts);
            case RouteTable.Found.OtherVerb(Set<Verb> allowed) ->
                    trouble(known(incoming), 405, "verb").with(Map.of("Allow", methods(allowed)));
            case RouteTable.Found.Nowhere() -> trouble(known(incoming), 404, "nowhere");
        };
    }

    private static String methods(Set<Verb> allowed) {
        return allowed.stream()
                .map(verb -> verb == Verb.GET ? "GET, HEAD" : "POST")
                .collect(Collectors.joining(", "));
    }

    /// A page of trouble in the language of whoever sent `incoming`.
    Outgoing trouble(Incoming incoming, int status, String key, Object... values) {
        return trouble(view(incoming, new Who.Nobody()), status, key, values);
    }

    private Outgoing trouble(View view, int status, String key, Object... values) {
        return printer.print(Reply.trouble(status, key, values), view).thenGoodbye();
    }

    private Outgoing admit(Incoming incoming, Route route, Map<String, String> parts) {
        View view = known(incoming);
        return door.turnAway(view.who(), route.access(), route.verb(), view.here())
                .map(instead -> printer.print(instead, view))
                .map(refused -> route.verb() == Verb.GET ? refused : refused.thenGoodbye())
                .orElseGet(() -> answer(incoming, view, route, parts));
    }

    private Outgoing answer(Incoming incoming, View view, Route route, Map<String, String> parts) {
        if (!(Fields.parse(incoming.query()) instanceof Fields.Read.Good(Fields query))) {
            return trouble(view, 400, "query");
        }
        if (route.verb() == Verb.GET) {
            return answer(incoming, view, route, parts, query, Fields.NONE);
        }
        if (!gate.isOwnForm(incoming, view.who())) {
            return trouble(view, 403, "origin");
        }
        return switch (FormBody.read(incoming)) {
            case FormBody.Read.Good(Fields form) ->
                    answer(incoming, view, route, parts, query, form);
            case FormBody.Read.Bad(Reply.Trouble trouble) ->
                    printer.print(trouble, view).thenGoodbye();
        };
    }

    @SuppressWarnings(
            "CatchingUnchecked") // the edge: whatever breaks behind it, the reader gets a page
    private Outgoing answer(
            Incoming incoming,
            View view,
            Route route,
            Map<String, String> parts,
            Fields query,
            Fields form) {
        try {
            Request request =
                    new Request(
                            route.verb(),
                            incoming.path(),
                            parts,
                            query,
                            form,
                            view.words(),
                            view.here(),
                            view.who(),
                            incoming.caller());
            return printer.print(route.answer(request), view);
        } catch (RecordsFailure failed) {
            return withoutBook(incoming, failed);
        } catch (RuntimeException bug) {
            LOG.error("{} {} could not be answered.", route.verb(), incoming.path(), bug);
            return trouble(view, 500, "inside");
        }
    }

    private Outgoing withoutBook(Incoming incoming, RecordsFailure failed) {
        LOG.error("{} {} could not be answered.", incoming.method(), incoming.path(), failed);
        View view = view(incoming, new Who.Nobody());
        String reason = RecordsWords.of(view.words().language()).say(failed.reason());
        return trouble(view, 503, "book", reason);
    }

    private Outgoing file(Incoming incoming) {
        Optional<Reply.Bytes> file = files.find(incoming.path());
        if (file.isEmpty()) {
            return trouble(incoming, 404, "nowhere");
        }
        Outgoing outgoing = printer.print(file.get(), view(incoming, new Who.Nobody()));
        boolean unchanged =
                incoming.header("If-None-Match")
                        .equals(Optional.of(outgoing.headers().getOrDefault("ETag", "")));
        return unchanged ? new Outgoing(304, outgoing.headers(), new byte[0], false) : outgoing;
    }

    private View known(Incoming incoming) {
        return view(incoming, door.who(incoming.caller()));
    }

    private View view(Incoming incoming, Who who) {
        Words words =
                languages.choose(
                        incoming.caller().cookie(Languages.COOKIE),
                        incoming.header("Accept-Language"));
        String here = incoming.isLook() ? incoming.here() : "/";
        return new View(words, languages.all(), incoming.path(), here, who);
    }
}
