package tamabako.bench.room;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Verb;

/// Javalin on virtual threads with its own event streams.
final class JavalinFront implements Front {

    private final Javalin server;
    private final Pages pages;
    private final Set<SseClient> clients = ConcurrentHashMap.newKeySet();

    JavalinFront(Rooms rooms, Pages pages) {
        this.pages = pages;
        server =
                Javalin.create(config -> {
                            config.startup.showJavalinBanner = false;
                            config.concurrency.useVirtualThreads = true;
                            config.routes.sse("/seat/{id}/stream", this::listen);
                            config.routes.post("/join/{code}", this::form);
                            config.routes.post("/seat/{id}/answers", this::form);
                        })
                        .start("127.0.0.1", 0);
        rooms.watch(change -> {
            if (change.events().stream().anyMatch(UndertowFront::isForAll)) {
                String told = Pages.told(change.after().run(), change.after().phase().word());
                clients.forEach(client -> client.sendEvent("round", told));
            }
        });
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
