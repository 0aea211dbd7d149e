package tamabako.desk.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/// A reply ready for the wire.
///
/// @param status the HTTP status
/// @param headers every header but the length
/// @param bytes the body
/// @param goodbye whether the connection is closed after it
/// @param flowing what comes by and by instead of the bytes, where anything does
@SuppressWarnings("ArrayRecordComponent") // handed straight to the socket, never compared
record Outgoing(
        int status,
        Map<String, String> headers,
        byte[] bytes,
        boolean goodbye,
        Optional<Reply.Flowing> flowing) {

    /// A reply that is there whole.
    Outgoing(int status, Map<String, String> headers, byte[] bytes, boolean goodbye) {
        this(status, headers, bytes, goodbye, Optional.empty());
    }

    Outgoing with(Map<String, String> more) {
        Map<String, String> all = new LinkedHashMap<>(headers);
        all.putAll(more);
        return new Outgoing(status, all, bytes, goodbye, flowing);
    }

    Outgoing thenGoodbye() {
        return new Outgoing(status, headers, bytes, true, flowing);
    }
}
