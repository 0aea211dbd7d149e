package tamabako.desk.web;

import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/// A request as it came off the wire, before anything in it is trusted.
///
/// @param method the method as written
/// @param path the path as written, without the query
/// @param query the query as written, empty where there is none
/// @param caller where it came from
/// @param headers the value of a header, if it came
/// @param body what follows the headers
record Incoming(
        String method,
        String path,
        String query,
        Caller caller,
        Function<String, Optional<String>> headers,
        InputStream body) {

    Optional<String> header(String name) {
        return headers.apply(name);
    }

    /// Where a request with these headers came from. Of two cookies of one name the first counts. A
    /// forwarding server tells in a header that its side was encrypted; nothing is opened to
    /// whoever tells so untruly.
    ///
    /// @param address the network address it came from
    /// @param encrypted whether it came to the desk itself by HTTPS
    static Caller caller(
            String address, boolean encrypted, Function<String, Optional<String>> headers) {
        Map<String, String> cookies = new HashMap<>();
        for (String cookie : headers.apply("Cookie").orElse("").split(";", -1)) {
            int equals = cookie.indexOf('=');
            if (equals > 0) {
                cookies.putIfAbsent(
                        cookie.substring(0, equals).strip(), cookie.substring(equals + 1).strip());
            }
        }
        String forwarded = headers.apply("X-Forwarded-Proto").orElse("");
        boolean isSecret = encrypted || forwarded.equalsIgnoreCase("https");
        return new Caller(address, isSecret, cookies, headers.apply("Host").orElse("localhost"));
    }

    /// The verb; HEAD is a GET whose body is left out on the wire.
    Optional<Verb> verb() {
        return switch (method) {
            case "GET", "HEAD" -> Optional.of(Verb.GET);
            case "POST" -> Optional.of(Verb.POST);
            default -> Optional.empty();
        };
    }

    /// Whether something is only looked at.
    boolean isLook() {
        return verb().equals(Optional.of(Verb.GET));
    }

    /// The address as it was asked for.
    String here() {
        return query.isEmpty() ? path : path + "?" + query;
    }
}
