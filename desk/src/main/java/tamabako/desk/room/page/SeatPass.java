package tamabako.desk.room.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tamabako.desk.web.Caller;

/// What a tablet carries to be let to its seat: the number of the seat, and a secret of 256 bits of
/// which the desk keeps the digest only. It travels in a cookie that no script can read.
///
/// @param seat the number
/// @param secret 43 letters
record SeatPass(int seat, String secret) {

    private static final String COOKIE = "seat";

    private static final Pattern FORM = Pattern.compile("(\\d{1,5})\\.([A-Za-z0-9_-]{43})");

    private static final SecureRandom RANDOM = new SecureRandom();

    private static final int BYTES = 32;

    /// A secret drawn by chance.
    static String freshSecret() {
        byte[] secret = new byte[BYTES];
        RANDOM.nextBytes(secret);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(secret);
    }

    /// The pass that a caller carries, if any.
    static Optional<SeatPass> of(Caller caller) {
        return caller.cookie(COOKIE)
                .map(FORM::matcher)
                .filter(Matcher::matches)
                .map(form -> new SeatPass(Integer.parseInt(form.group(1)), form.group(2)));
    }

    /// The digest of a secret, in hexadecimal figures: what the room knows as the key.
    static String key(String secret) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(secret.getBytes(StandardCharsets.US_ASCII));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every JDK has SHA-256.", impossible);
        }
    }

    String key() {
        return key(secret);
    }

    /// The header that gives the pass to the tablet, for the pages of that room only.
    String cookie(String room, Caller caller) {
        return "%s=%d.%s; Path=/seat/%s; Max-Age=129600; HttpOnly; SameSite=Strict%s"
                .formatted(COOKIE, seat, secret, room, caller.encrypted() ? "; Secure" : "");
    }
}
