package tamabako.desk.web;

import java.io.InputStream;
import java.util.Optional;
import java.util.function.Function;

/// A request as it came off the wire, before anything in it is trusted.
///
/// @param method the method as written
/// @param path the path as written, without the query
/// @param query the query as written, empty where there is none
/// @param headers the value of a header, if it came
/// @param body what follows the headers
record Incoming(
        String method,
        String path,
        String query,
        Function<String, Optional<String>> headers,
        InputStream body) {

    Optional<String> header(String name) {
        return headers.apply(name);
    }

    /// The value of a cookie, if it came.
    Optional<String> cookie(String name) {
        String wanted = name + "=";
        for (String cookie : header("Cookie").orElse("").split(";", -1)) {
            if (cookie.strip().startsWith(wanted)) {
                return Optional.of(cookie.strip().substring(wanted.length()));
            }
        }
        return Optional.empty();
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
