package tamabako.bench.room;

import java.net.InetAddress;
import java.util.List;
import tamabako.desk.web.DeskServer;

/// The desk's own server.
final class DeskFront implements Front {

    private final DeskParts parts;
    private final DeskServer server;

    DeskFront(DeskParts parts) {
        this.parts = parts;
        this.server = DeskServer.start(InetAddress.getLoopbackAddress(), 0, List.of(parts.pages()));
    }

    @Override
    public int port() {
        return server.port();
    }

    @Override
    public void close() {
        parts.live().close();
        server.close();
    }
}
