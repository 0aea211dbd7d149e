package tamabako.desk.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// A block of a PEM file (RFC 7468).
///
/// @param label what it holds, such as `CERTIFICATE`
/// @param bytes what is in it
@SuppressWarnings("ArrayRecordComponent") // handed straight to a reader, never compared
record Pem(String label, byte[] bytes) {

    private static final Pattern BLOCK =
            Pattern.compile("-----BEGIN ([A-Z0-9 ]+)-----([A-Za-z0-9+/=\\s]*)-----END \\1-----");

    /// The blocks of a file, in their order; what lies between them is left out.
    ///
    /// @throws BadEncryption if the file cannot be read
    static List<Pem> read(Path file) throws BadEncryption {
        try {
            // Latin letters, so that a file of anything else is no error but has no blocks.
            String text = Files.readString(file, StandardCharsets.ISO_8859_1);
            List<Pem> blocks = new ArrayList<>();
            Matcher block = BLOCK.matcher(text);
            while (block.find()) {
                byte[] bytes = Base64.getMimeDecoder().decode(block.group(2));
                blocks.add(new Pem(block.group(1), bytes));
            }
            return blocks;
        } catch (IOException | IllegalArgumentException failed) {
            throw new BadEncryption(BadEncryption.Reason.NOT_READ, file, failed);
        }
    }
}
