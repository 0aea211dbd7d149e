package tamabako.desk.web;

import io.helidon.http.DirectHandler;
import io.helidon.http.HeaderNames;
import io.helidon.http.Headers;
import io.helidon.http.ServerResponseHeaders;
import io.helidon.http.Status;
import io.helidon.webserver.CloseConnectionException;
import io.helidon.webserver.http.DirectHandlers;
import io.helidon.webserver.http.ServerRequest;
import io.helidon.webserver.http.ServerResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.util.Optional;
import java.util.function.Function;

/// Carries requests from the HTTP library to the [Front], and replies back.
final class Wire {

    private final Front front;

    Wire(Front front) {
        this.front = front;
    }

    /// Answers a request that the library could read.
    void handle(ServerRequest request, ServerResponse response) {
        Incoming incoming =
                new Incoming(
                        request.prologue().method().text(),
                        request.path().rawPath(),
                        request.query().rawValue(),
                        address(request.remotePeer().address()),
                        headers(request.headers()),
                        request.content().hasEntity()
                                ? request.content().inputStream()
                                : InputStream.nullInputStream());
        Outgoing outgoing = front.answer(incoming);
        response.status(Status.create(outgoing.status()));
        outgoing.headers()
                .forEach((name, value) -> response.header(HeaderNames.create(name), value));
        if (outgoing.goodbye()) {
            response.header(HeaderNames.CONNECTION, "close");
        }
        if (outgoing.flowing().isPresent() && !incoming.method().equals("HEAD")) {
            flow(outgoing.flowing().get(), response);
        } else {
            response.send(outgoing.bytes());
        }
    }

    private static void flow(Reply.Flowing flowing, ServerResponse response) {
        try (OutputStream out = response.outputStream()) {
            flowing.write(out);
        } catch (IOException | UncheckedIOException gone) {
            throw new CloseConnectionException("The visitor is gone.", gone);
        }
    }

    /// Answers what the library refuses before it reaches a route: a request line or headers that
    /// are too long or broken.
    void direct(DirectHandlers.Builder handlers) {
        for (DirectHandler.EventType type : DirectHandler.EventType.values()) {
            handlers.addHandler(type, this::refuse);
        }
    }

    private DirectHandler.TransportResponse refuse(
            DirectHandler.TransportRequest request,
            DirectHandler.EventType type,
            Status status,
            ServerResponseHeaders headers,
            String message) {
        Incoming incoming =
                new Incoming(
                        "GET",
                        "/",
                        "",
                        "",
                        headers(request.headers()),
                        InputStream.nullInputStream());
        Outgoing outgoing = front.trouble(incoming, status.code(), "unreadable");
        var response =
                DirectHandler.TransportResponse.builder()
                        .status(status)
                        .keepAlive(false)
                        .entity(outgoing.bytes());
        outgoing.headers()
                .forEach((name, value) -> response.header(HeaderNames.create(name), value));
        return response.build();
    }

    private static String address(SocketAddress peer) {
        return peer instanceof InetSocketAddress place
                ? place.getAddress().getHostAddress()
                : String.valueOf(peer);
    }

    private static Function<String, Optional<String>> headers(Headers headers) {
        return name -> headers.first(HeaderNames.create(name));
    }
}
