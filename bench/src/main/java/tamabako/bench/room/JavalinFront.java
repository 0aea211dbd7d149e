package tamabako.bench.room;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Verb;

/// Javalin on virtual threads with its own event streams.
final class JavalinFront implements Front {

    private static final long PATIENCE = 600_000;

    private final Javalin server;
    private final Pages pages;
    private final Set<SseClient> clients = ConcurrentHashMap.newKeySet();

    JavalinFront(Rooms rooms, Pages pages) {
        this.pages = pages;
        server =
                Javalin.create(
                                config -> {
                                    config.startup.showJavalinBanner = false;
                                    config.concurrency.useVirtualThreads = true;
                                    config.jetty.addConnector(JavalinFront::patient);
                                    config.routes.sse("/seat/{id}/stream", this::listen);
                                    config.routes.post("/join/{code}", this::form);
                                    config.routes.post("/seat/{id}/answers", this::form);
                                })
                        .start();
        rooms.watch(change -> {
            if (change.events().stream().anyMatch(UndertowFront::isForAll)) {
                String told = Pages.told(change.after().run(), change.after().phase().word());
                clients.forEach(client -> client.sendEvent("round", told));
            }
        });
    }

    /// On the loopback address; seats that think for a while are not let go.
    private static ServerConnector patient(Server server, HttpConfiguration http) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost("127.0.0.1");
        connector.setIdleTimeout(PATIENCE);
        return connector;
    }

    private void listen(SseClient client) {
        client.keepAlive();
        client.onClose(() -> clients.remove(client));
        client.sendEvent("round", Pages.told(0, "waiting"));
        clients.add(client);
    }

    private void form(Context context) {
        String cookie = Optional.ofNullable(context.header("Cookie")).orElse("");
        switch (pages.answer(Verb.POST, context.path(), cookie, context.body())) {
            case Reply.SeeOther(String address, var headers) -> {
                headers.forEach(context::header);
                context.status(303).header("Location", address);
            }
            case Reply.Bytes(int status, String type, _, byte[] bytes) ->
                    context.status(status).contentType(type).result(bytes);
            case Reply.Page _, Reply.Trouble _, Reply.Flow _ -> context.status(500);
        }
    }

    @Override
    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        server.stop();
    }
}
