package tamabako.desk.room.page;

import java.io.IOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketException;
import java.util.List;
import java.util.Optional;
import tamabako.desk.web.Caller;

/// The address that pupils open.
///
/// @param address such as `http://192.168.1.7:8686/join`
/// @param reachable whether other computers reach it
public record JoinAddress(String address, boolean reachable) {

    private static final int PATIENCE = 300;

    /// The address under which this caller sees the desk; who sees it from the computer that it
    /// runs on is told the computer's address in the house.
    static JoinAddress of(Caller caller) {
        String host = caller.host();
        String name = host.replaceFirst(":\\d{1,5}$", "");
        String port = host.substring(name.length());
        String scheme = caller.encrypted() ? "https://" : "http://";
        boolean isHere =
                name.equals("localhost") || name.startsWith("127.") || name.equals("[::1]");
        if (!isHere) {
            return new JoinAddress(scheme + host + "/join", true);
        }
        int number = port.isEmpty() ? 80 : Integer.parseInt(port.substring(1));
        return inTheHouse()
                .filter(address -> answers(address, number))
                .map(address ->
                        new JoinAddress(scheme + address.getHostAddress() + port + "/join", true))
                .orElseGet(() -> new JoinAddress(scheme + host + "/join", false));
    }

    private static Optional<InetAddress> inTheHouse() {
        try {
            List<NetworkInterface> all = NetworkInterface.networkInterfaces().toList();
            for (NetworkInterface one : all) {
                if (one.isUp() && !one.isLoopback()) {
                    Optional<InetAddress> found =
                            one.inetAddresses().filter(Inet4Address.class::isInstance).findFirst();
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        } catch (SocketException none) {
            // Then it is reached from here alone.
        }
        return Optional.empty();
    }

    private static boolean answers(InetAddress address, int port) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(address, port), PATIENCE);
            return true;
        } catch (IOException closed) {
            return false;
        }
    }
}
