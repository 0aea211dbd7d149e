package tamabako.bench.room;

import io.undertow.Handlers;
import io.undertow.Undertow;
import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.handlers.BlockingHandler;
import io.undertow.server.handlers.sse.ServerSentEventConnection;
import io.undertow.server.handlers.sse.ServerSentEventHandler;
import io.undertow.util.Headers;
import io.undertow.util.HttpString;
import io.undertow.util.Methods;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import tamabako.desk.room.RoomEvent;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Verb;

/// Undertow with its own event streams.
final class UndertowFront implements Front {

    private final Undertow server;
    private final Pages pages;
    private final ExecutorService workers = Executors.newVirtualThreadPerTaskExecutor();

    UndertowFront(Rooms rooms, Pages pages) {
        this.pages = pages;
        ServerSentEventHandler streams =
                Handlers.serverSentEvents((connection, _) ->
                        connection.send(Pages.told(0, "waiting"), "round", null, null));
        rooms.watch(change -> {
            if (change.events().stream().anyMatch(UndertowFront::isForAll)) {
                String told = Pages.told(change.after().run(), change.after().phase().word());
                for (ServerSentEventConnection connection : streams.getConnections()) {
                    connection.send(told, "round", null, null);
                }
            }
        });
        HttpHandler forms = new BlockingHandler(this::form);
        server =
                Undertow.builder()
                        .addHttpListener(0, "127.0.0.1")
                        .setHandler(exchange -> {
                            if (exchange.getRequestPath().endsWith("/stream")) {
                                streams.handleRequest(exchange);
                            } else {
                                // A form waits for the disk, so it must not hold an I/O thread.
                                exchange.dispatch(workers, forms);
                            }
                        })
                        .build();
        server.start();
    }

    static boolean isForAll(RoomEvent event) {
        return event instanceof RoomEvent.Started
                || event instanceof RoomEvent.Paused
                || event instanceof RoomEvent.RoundSet;
    }

    private void form(HttpServerExchange exchange) throws IOException {
        String form =
                new String(exchange.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        String cookie =
                Optional.ofNullable(exchange.getRequestHeaders().getFirst(Headers.COOKIE))
                        .orElse("");
        Verb verb = exchange.getRequestMethod().equals(Methods.POST) ? Verb.POST : Verb.GET;
        switch (pages.answer(verb, exchange.getRequestPath(), cookie, form)) {
            case Reply.SeeOther(String address, var headers) -> {
                exchange.setStatusCode(303);
                exchange.getResponseHeaders().put(Headers.LOCATION, address);
                headers.forEach((name, value) ->
                        exchange.getResponseHeaders().put(new HttpString(name), value));
                exchange.endExchange();
            }
            case Reply.Bytes(int status, String type, _, byte[] bytes) -> {
                exchange.setStatusCode(status);
                exchange.getResponseHeaders().put(Headers.CONTENT_TYPE, type);
                exchange.getResponseSender().send(ByteBuffer.wrap(bytes));
            }
            case Reply.Page _, Reply.Trouble _, Reply.Flow _ -> {
                exchange.setStatusCode(500);
                exchange.endExchange();
            }
        }
    }

    @Override
    public int port() {
        return ((InetSocketAddress) server.getListenerInfo().getFirst().getAddress()).getPort();
    }

    @Override
    public void close() {
        server.stop();
        workers.close();
    }
}
