package tamabako.desk.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Takes a form with files apart (`multipart/form-data`, RFC 7578), as browsers send it.
final class Multipart {

    private static final Pattern BOUNDARY =
            Pattern.compile("boundary=\"?([0-9A-Za-z'()+_,./:=? -]{1,70}?)\"?(?:;.*)?$");
    private static final Pattern NAME = Pattern.compile("[; ]name=\"([^\"]*)\"");
    private static final Pattern FILE_NAME = Pattern.compile("filename=\"([^\"]*)\"");
    private static final int MOST_PARTS = 100;

    private final byte[] body;

    /// The body letter by letter, which lets the boundaries be searched as texts are.
    private final String letters;

    private final Map<String, List<String>> values = new LinkedHashMap<>();
    private final Map<String, Upload> files = new LinkedHashMap<>();

    private Multipart(byte[] body) {
        this.body = body;
        this.letters = new String(body, StandardCharsets.ISO_8859_1);
    }

    /// The fields and files of a body; empty where it is not whole.
    ///
    /// @param type the value of the header Content-Type, with its boundary
    static Optional<Fields> parse(String type, byte[] body) {
        Matcher boundary = BOUNDARY.matcher(type);
        return boundary.find()
                ? new Multipart(body).parts("--" + boundary.group(1))
                : Optional.empty();
    }

    private Optional<Fields> parts(String line) {
        int at = letters.startsWith(line) ? 0 : letters.indexOf("\r\n" + line);
        for (int count = 0; at >= 0 && count <= MOST_PARTS; count++) {
            int begin = at + line.length() + (letters.startsWith("\r\n", at) ? 2 : 0);
            if (letters.startsWith("--", begin)) {
                return Optional.of(Fields.of(values, files));
            }
            int head = letters.indexOf("\r\n\r\n", begin);
            int end = letters.indexOf("\r\n" + line, begin);
            if (head < 0 || end < head + 2 || !letters.startsWith("\r\n", begin)) {
                return Optional.empty();
            }
            // A part without a body ends where its head does.
            take(text(begin, head), Math.min(head + 4, end), end);
            at = end;
        }
        return Optional.empty();
    }

    private void take(String head, int begin, int end) {
        Matcher name = NAME.matcher(head);
        if (!name.find()) {
            return;
        }
        Matcher file = FILE_NAME.matcher(head);
        if (file.find()) {
            String plain = file.group(1).replaceFirst("^.*[/\\\\]", "");
            files.put(name.group(1), new Upload(plain, Arrays.copyOfRange(body, begin, end)));
        } else {
            values.computeIfAbsent(name.group(1), _ -> new ArrayList<>()).add(text(begin, end));
        }
    }

    private String text(int begin, int end) {
        return new String(body, begin, end - begin, StandardCharsets.UTF_8);
    }
}
