package tamabako.desk.web;

import java.util.Map;
import java.util.Optional;

/// Where a request came from, and what it carried to be known by.
///
/// @param address the network address it came from, as text; behind a forwarding server that
///   server's
/// @param encrypted whether it came by HTTPS, as far as the desk was told
/// @param cookies the cookies it carried
/// @param host the name and port under which it sees the desk
public record Caller(String address, boolean encrypted, Map<String, String> cookies, String host) {

    public Caller {
        cookies = Map.copyOf(cookies);
    }

    /// Whether it came from this computer itself.
    public boolean isThisComputer() {
        return address.startsWith("127.") || address.equals("0:0:0:0:0:0:0:1");
    }

    /// Someone who sees the desk under this computer's own name.
    public Caller(String address, boolean encrypted, Map<String, String> cookies) {
        this(address, encrypted, cookies, "localhost");
    }

    /// The value of that cookie, if it came.
    public Optional<String> cookie(String name) {
        return Optional.ofNullable(cookies.get(name));
    }
}
