package tamabako.desk.web;

import io.undertow.Undertow;
import io.undertow.UndertowOptions;
import io.undertow.server.DefaultByteBufferPool;
import io.undertow.server.handlers.HttpContinueReadHandler;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.xnio.Options;

/// The desk's server while it runs. It answers on one address and port, a virtual thread for each
/// page that is made; a connection that waits has no thread.
public final class DeskServer implements AutoCloseable {

    /// A connection on which nothing moves is closed after so long, in milliseconds.
    private static final int IDLE = 60_000;

    /// The headers of a request have to be there after so long, in milliseconds.
    private static final int SLOWEST_HEAD = 30_000;

    /// Longer headers are not even read to the end; the page that tells so is for shorter ones.
    private static final int LONGEST_HEAD = 128 * 1024;

    /// The longest body that is read, if only to be thrown away.
    private static final long LONGEST_BODY = 1L << 30;

    /// Each of up to 10,000 seats listens on one connection and sends on another.
    private static final int CONNECTIONS = 24_000;

    /// Small, since thousands of seats send at once and few of their messages are longer.
    private static final int BUFFER = 2 * 1024;

    private static final int BUFFERS = 256;

    private final Undertow server;
    private final ExecutorService visitors;
    private final InetAddress address;
    private final List<Route> routes;
    private final boolean encrypted;

    private DeskServer(
            Undertow server,
            ExecutorService visitors,
            InetAddress address,
            List<Route> routes,
            boolean encrypted) {
        this.server = server;
        this.visitors = visitors;
        this.address = address;
        this.routes = List.copyOf(routes);
        this.encrypted = encrypted;
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
        return start(address, port, pages, door, Optional.empty());
    }

    /// Starts a server.
    ///
    /// @param encryption what it is reached by HTTPS with; empty for plain HTTP
    /// @see #start(InetAddress, int, List, Door)
    public static DeskServer start(
            InetAddress address,
            int port,
            List<Routes> pages,
            Door door,
            Optional<Encryption> encryption) {
        Languages languages =
                Languages.of(pages.stream().flatMap(page -> page.wordFiles().stream()).toList());
        List<Route> routes = new ArrayList<>(new LanguageSwitch(languages).routes());
        pages.forEach(page -> routes.addAll(page.routes()));
        Front front = new Front(new RouteTable(routes), languages, new Gate(names(address)), door);
        ExecutorService visitors = Executors.newVirtualThreadPerTaskExecutor();
        String place = address.getHostAddress();
        Undertow.Builder builder =
                encryption
                        .map(with ->
                                Undertow.builder().addHttpsListener(port, place, with.context()))
                        .orElseGet(() -> Undertow.builder().addHttpListener(port, place));
        Undertow server =
                builder.setByteBufferPool(new DefaultByteBufferPool(false, BUFFER, BUFFERS, 0))
                        .setIoThreads(Math.max(2, Runtime.getRuntime().availableProcessors()))
                        .setWorkerThreads(1)
                        .setWorkerOption(Options.CONNECTION_HIGH_WATER, CONNECTIONS)
                        .setWorkerOption(Options.CONNECTION_LOW_WATER, CONNECTIONS)
                        .setServerOption(UndertowOptions.IDLE_TIMEOUT, IDLE)
                        .setServerOption(UndertowOptions.REQUEST_PARSE_TIMEOUT, SLOWEST_HEAD)
                        .setServerOption(UndertowOptions.MAX_HEADER_SIZE, LONGEST_HEAD)
                        .setServerOption(UndertowOptions.MAX_ENTITY_SIZE, LONGEST_BODY)
                        .setServerOption(UndertowOptions.MAX_PARAMETERS, LONGEST_HEAD)
                        // The desk reads paths and queries itself, and answers bad ones.
                        .setServerOption(UndertowOptions.DECODE_URL, false)
                        .setServerOption(UndertowOptions.ALLOW_UNESCAPED_CHARACTERS_IN_URL, true)
                        .setHandler(new HttpContinueReadHandler(new Wire(front, visitors)))
                        .build();
        server.start();
        return new DeskServer(server, visitors, address, routes, encryption.isPresent());
    }

    /// Every address that it answers at, but for files under `/static/`.
    public List<Route> routes() {
        return routes;
    }

    /// The port it listens on.
    public int port() {
        return ((InetSocketAddress) server.getListenerInfo().getFirst().getAddress()).getPort();
    }

    /// The address to type into a browser on this machine.
    public String url() {
        String host =
                address.isLoopbackAddress() || address.isAnyLocalAddress()
                        ? "localhost"
                        : address.getHostAddress();
        return "%s://%s:%d/".formatted(encrypted ? "https" : "http", host, port());
    }

    @Override
    public void close() {
        server.stop();
        visitors.shutdownNow();
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
