package tamabako.desk.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/// Reads the form that a request carries.
final class FormBody {

    /// The longest form that is taken, in bytes.
    static final int LIMIT = 256 * 1024;

    /// How much of a longer one is read and thrown away, so that the browser gets to see the reply.
    private static final long DRAINED = 16L * 1024 * 1024;

    private FormBody() {}

    /// What came of reading.
    sealed interface Read {
        /// The fields.
        record Good(Fields fields) implements Read {}

        /// It cannot be taken; `trouble` says why.
        record Bad(Reply.Trouble trouble) implements Read {}
    }

    /// @param megabytes the longest form with files that is taken; 0 where none is
    static Read read(Incoming incoming, int megabytes) {
        String written = incoming.header("Content-Type").orElse("");
        String type = written.toLowerCase(Locale.ROOT);
        if (megabytes > 0 && type.startsWith("multipart/form-data")) {
            return files(incoming, written, megabytes);
        }
        if (!type.split(";", 2)[0].strip().equals("application/x-www-form-urlencoded")) {
            drain(incoming.body());
            return bad(415, "form-type");
        }
        try {
            byte[] bytes = incoming.body().readNBytes(LIMIT + 1);
            if (bytes.length > LIMIT) {
                drain(incoming.body());
                return bad(413, "form-long", LIMIT / 1024);
            }
            return fields(new String(bytes, StandardCharsets.ISO_8859_1));
        } catch (IOException broken) {
            return bad(400, "form-broken");
        }
    }

    private static Read files(Incoming incoming, String type, int megabytes) {
        try {
            byte[] bytes = incoming.body().readNBytes(megabytes * 1024 * 1024 + 1);
            if (bytes.length > megabytes * 1024 * 1024) {
                drain(incoming.body());
                return bad(413, "file-long", megabytes);
            }
            return Multipart.parse(type, bytes)
                    .<Read>map(Read.Good::new)
                    .orElseGet(() -> bad(400, "form-broken"));
        } catch (IOException broken) {
            return bad(400, "form-broken");
        }
    }

    private static Read fields(String encoded) {
        return switch (Fields.parse(encoded)) {
            case Fields.Read.Good(Fields fields) -> new Read.Good(fields);
            case Fields.Read.Garbled() -> bad(400, "form-garbled");
            case Fields.Read.TooMany() -> bad(413, "form-many", Fields.MOST);
        };
    }

    private static void drain(InputStream body) {
        try {
            long left = DRAINED;
            byte[] piece = new byte[16 * 1024];
            for (int got = body.read(piece); got >= 0 && left > 0; got = body.read(piece)) {
                left -= got;
            }
        } catch (IOException gone) {
            // Nobody is left to answer.
        }
    }

    private static Read bad(int status, String key, Object... values) {
        return new Read.Bad((Reply.Trouble) Reply.trouble(status, key, values));
    }
}
