package tamabako.desk.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/// What a browser carries to be known: 256 bits of chance, as text.
record Token(String text) {

    private static final SecureRandom CHANCE = new SecureRandom();
    private static final int BYTES = 32;

    /// Another one.
    static Token fresh() {
        byte[] bytes = new byte[BYTES];
        CHANCE.nextBytes(bytes);
        return new Token(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /// What is kept of it: its SHA-256, from which it cannot be found again.
    String digest() {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every JDK has SHA-256.", impossible);
        }
    }

    /// Not its text, so that it gets into no log.
    @Override
    public String toString() {
        return "a token";
    }
}
