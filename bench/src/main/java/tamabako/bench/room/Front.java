package tamabako.bench.room;

import java.util.List;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Route;

/// One HTTP server in front of the rooms.
interface Front extends AutoCloseable {

    /// The port it listens on, of the loopback address.
    int port();

    @Override
    void close();

    /// Starts one of them.
    ///
    /// @param name `desk`, `undertow` or `javalin`
    /// @param rooms what is open
    /// @param routes the same pages for all of them
    static Front start(String name, DeskParts parts, Rooms rooms, List<Route> routes) {
        return switch (name) {
            case "desk" -> new DeskFront(parts);
            case "undertow" -> new UndertowFront(rooms, new Pages(routes));
            case "javalin" -> new JavalinFront(rooms, new Pages(routes));
            default -> throw new IllegalArgumentException("No server \"" + name + "\".");
        };
    }
}
