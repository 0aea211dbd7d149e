package tamabako.desk.web;

import io.helidon.webserver.WebServer;
import io.helidon.webserver.http1.Http1Config;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;

/// The desk's server while it runs. It answers on one address and port, a virtual thread for each
/// connection.
public final class DeskServer implements AutoCloseable {

    /// Kept, because a logger that nobody holds forgets its level. A visitor who breaks off is no
    /// news.
    private static final Logger LIBRARY = Logger.getLogger("io.helidon");

    private final WebServer server;
    private final InetAddress address;
    private final List<Route> routes;

    private DeskServer(WebServer server, InetAddress address, List<Route> routes) {
        this.server = server;
        this.address = address;
        this.routes = List.copyOf(routes);
    }

    /// Starts a server without passwords, for whoever sits at this computer.
    ///
    /// @param address where it listens, which must be the loopback address
    /// @param port the port, 0 for any free one
    /// @param pages what it shows
    /// @throws IllegalArgumentException if others could reach that address
    public static DeskServer start(InetAddress address, int port, List<Routes> pages) {
        if (!address.isLoopbackAddress()) {
            throw new IllegalArgumentException("Others can reach " + address + " too.");
        }
        return start(address, port, pages, Door.open());
    }

    /// Starts a server.
    ///
    /// @param address where it listens; the loopback address lets only this machine in
    /// @param port the port, 0 for any free one
    /// @param pages what it shows
    /// @param door who may come in
    public static DeskServer start(InetAddress address, int port, List<Routes> pages, Door door) {
        LIBRARY.setLevel(Level.SEVERE);
        Languages languages =
                Languages.of(pages.stream().flatMap(page -> page.wordFiles().stream()).toList());
        List<Route> routes = new ArrayList<>(new LanguageSwitch(languages).routes());
        pages.forEach(page -> routes.addAll(page.routes()));
        Front front = new Front(new RouteTable(routes), languages, new Gate(names(address)), door);
        Wire wire = new Wire(front);
        WebServer server =
                WebServer.builder()
                        .address(address)
                        .port(port)
                        .featuresDiscoverServices(false)
                        .shutdownHook(false)
                        .shutdownGracePeriod(Duration.ofSeconds(2))
                        .idleConnectionTimeout(Duration.ofMinutes(1))
                        // Each of up to 10,000 seats listens on one connection and sends on
                        // another.
                        .maxTcpConnections(24_000)
                        // Buffers of channels are twice as large; thousands of seats listen.
                        .useNio(false)
                        .protocolsDiscoverServices(false)
                        .addProtocol(
                                Http1Config.builder()
                                        .maxHeadersSize(16 * 1024)
                                        .maxPrologueLength(16 * 1024)
                                        .build())
                        .directHandlers(wire::direct)
                        .routing(routing -> routing.any(wire::handle))
                        .build()
                        .start();
        return new DeskServer(server, address, routes);
    }

    /// Every address that it answers at, but for files under `/static/`.
    public List<Route> routes() {
        return routes;
    }

    /// The port it listens on.
    public int port() {
        return server.port();
    }

    /// The address to type into a browser on this machine.
    public String url() {
        String host =
                address.isLoopbackAddress() || address.isAnyLocalAddress()
                        ? "localhost"
                        : address.getHostAddress();
        return "http://%s:%d/".formatted(host, port());
    }

    @Override
    public void close() {
        server.stop();
    }

    private static Set<String> names(InetAddress address) {
        Set<String> names = new TreeSet<>(Set.of("localhost"));
        if (!address.isLoopbackAddress()) {
            try {
                names.add(InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT));
            } catch (UnknownHostException nameless) {
                // Then it is reached by its address alone.
            }
        }
        return names;
    }
}
