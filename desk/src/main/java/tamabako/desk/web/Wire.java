package tamabako.desk.web;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.util.HeaderMap;
import io.undertow.util.HeaderValues;
import io.undertow.util.Headers;
import io.undertow.util.HttpString;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.xnio.IoUtils;

/// Carries requests from the HTTP library to the [Front], and replies back.
///
/// A page is made on a virtual thread of its own, which may wait for the disk or for a slow form;
/// replies and event streams are written as the visitor takes them, without any thread.
final class Wire implements HttpHandler {

    private static final Logger LOG = LoggerFactory.getLogger(Wire.class);

    /// The longest request line, and the longest headers, that are looked at.
    private static final int LONGEST = 16 * 1024;

    /// A browser that came by HTTPS once comes by nothing else for so long, in seconds.
    private static final String A_YEAR = "max-age=31536000";

    private final Front front;
    private final Executor visitors;
    private final Map<Executor, Lane> lanes = new ConcurrentHashMap<>();
    private final Map<String, HttpString> names = new ConcurrentHashMap<>();

    /// @param visitors runs each task on a virtual thread of its own
    Wire(Front front, Executor visitors) {
        this.front = front;
        this.visitors = visitors;
    }

    @Override
    public void handleRequest(HttpServerExchange exchange) {
        exchange.dispatch(visitors, () -> handle(exchange));
    }

    // Whatever breaks, the connection does not stay open for ever.
    @SuppressWarnings("CatchingUnchecked")
    private void handle(HttpServerExchange exchange) {
        try {
            answer(exchange);
        } catch (RuntimeException | Error bug) {
            LOG.error("{} could not be answered.", exchange.getRequestURI(), bug);
            IoUtils.safeClose(exchange.getConnection());
        }
    }

    private void answer(HttpServerExchange exchange) {
        Function<String, Optional<String>> headers =
                name -> Optional.ofNullable(exchange.getRequestHeaders().getFirst(name));
        Incoming incoming =
                new Incoming(
                        exchange.getRequestMethod().toString(),
                        path(exchange),
                        exchange.getQueryString(),
                        Incoming.caller(address(exchange), isEncrypted(exchange), headers),
                        headers,
                        Body.of(exchange));
        Outgoing outgoing =
                isTooLong(exchange)
                        ? front.trouble(incoming, 431, "unreadable")
                        : front.answer(incoming);
        send(incoming, outgoing, exchange);
    }

    private void send(Incoming incoming, Outgoing outgoing, HttpServerExchange exchange) {
        exchange.setStatusCode(outgoing.status());
        HeaderMap headers = exchange.getResponseHeaders();
        outgoing.headers()
                .forEach((name, value) ->
                        headers.put(names.computeIfAbsent(name, HttpString::new), value));
        boolean isStream = outgoing.flowing().isPresent() && !incoming.method().equals("HEAD");
        // For "localhost" it would shut out other programs of the same computer.
        if (isEncrypted(exchange) && !incoming.caller().host().startsWith("localhost")) {
            headers.put(Headers.STRICT_TRANSPORT_SECURITY, A_YEAR);
        }
        if (isStream || outgoing.goodbye()) {
            exchange.setPersistent(false);
        }
        if (isStream) {
            Lane lane = lanes.computeIfAbsent(exchange.getIoThread(), Lane::new);
            outgoing.flowing().get().begin(new Hearer(exchange, lane));
        } else {
            exchange.getResponseSender().send(ByteBuffer.wrap(outgoing.bytes()));
        }
    }

    /// The path as it was written, also where a whole address was asked for.
    private static String path(HttpServerExchange exchange) {
        String asked = exchange.getRequestURI();
        if (!exchange.isHostIncludedInRequestURI()) {
            return asked;
        }
        int slash = asked.indexOf('/', asked.indexOf("://") + 3);
        return slash < 0 ? "/" : asked.substring(slash);
    }

    private static boolean isTooLong(HttpServerExchange exchange) {
        long line = (long) exchange.getRequestURI().length() + exchange.getQueryString().length();
        long headers = 0;
        for (HeaderValues values : exchange.getRequestHeaders()) {
            for (String value : values) {
                headers += values.getHeaderName().length() + value.length();
            }
        }
        return line > LONGEST || headers > LONGEST;
    }

    private static boolean isEncrypted(HttpServerExchange exchange) {
        return exchange.getRequestScheme().equals("https");
    }

    private static String address(HttpServerExchange exchange) {
        InetSocketAddress place = exchange.getSourceAddress();
        return place.isUnresolved() ? place.getHostString() : place.getAddress().getHostAddress();
    }
}
