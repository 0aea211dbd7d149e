package tamabako.desk.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/// What a visitor gets.
public sealed interface Reply {

    /// A page rendered from a template under `src/main/jte`. The template takes `model` and a
    /// [View] named `view`.
    record Page(int status, String template, Map<String, Object> model) implements Reply {
        public Page {
            model = Map.copyOf(model);
        }
    }

    /// Bytes as they are: a PDF, JSON, an image.
    ///
    /// @param type the media type, such as `application/pdf`
    @SuppressWarnings("ArrayRecordComponent") // handed straight to the socket, never compared
    record Bytes(int status, String type, Map<String, String> headers, byte[] bytes)
            implements Reply {
        public Bytes {
            headers = Map.copyOf(headers);
        }
    }

    /// Bytes that come by and by, for as long as the visitor stays.
    ///
    /// @param type the media type, such as `text/event-stream`
    record Flow(String type, Flowing flowing) implements Reply {}

    /// Tells what comes by and by.
    interface Flowing {
        /// Begins to tell it, and comes back at once.
        void begin(Outlet out);
    }

    /// Sends the visitor on to look at another address of the desk, after a form was taken.
    record SeeOther(String address, Map<String, String> headers) implements Reply {
        public SeeOther {
            headers = Map.copyOf(headers);
        }
    }

    /// A page that says what went wrong, where, and how to mend it.
    ///
    /// @param status the HTTP status, 400 to 599
    /// @param key names the texts `trouble.KEY.what` and `trouble.KEY.mend`
    /// @param values the values named in the texts
    record Trouble(int status, String key, List<Object> values) implements Reply {
        public Trouble {
            values = List.copyOf(values);
        }
    }

    /// A page that is as it should be.
    static Reply page(String template, Map<String, Object> model) {
        return new Page(200, template, model);
    }

    /// An event stream.
    static Reply stream(Flowing flowing) {
        return new Flow("text/event-stream; charset=utf-8", flowing);
    }

    /// JSON as text.
    static Reply json(String text) {
        return new Bytes(200, "application/json", Map.of(), text.getBytes(StandardCharsets.UTF_8));
    }

    /// On to `address`, which is one of the desk's own.
    static Reply seeOther(String address) {
        return new SeeOther(address, Map.of());
    }

    /// A page of trouble.
    static Reply trouble(int status, String key, Object... values) {
        return new Trouble(status, key, List.of(values));
    }
}
