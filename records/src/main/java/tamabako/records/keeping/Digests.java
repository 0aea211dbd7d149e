package tamabako.records.keeping;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/// The digest that tells whether a backup is whole.
final class Digests {

    private Digests() {}

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every JDK has SHA-256.", impossible);
        }
    }
}
