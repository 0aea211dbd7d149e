package tamabako.records.keeping;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.SecretKeySpec;
import tamabako.records.Reason;
import tamabako.records.RecordsFailure;

/// How a backup is locked, as the first line of its file says: AES-256 in GCM, whose key is made
/// from the passphrase by PBKDF2 with HMAC-SHA-256 and 600,000 rounds (the OWASP Password Storage
/// Cheat Sheet's figure), all from the JDK. Salt and nonce are fresh for each file, and the first
/// line itself is sealed with the rest.
final class Lock {

    private static final Pattern WRITTEN =
            Pattern.compile("aes-256-gcm pbkdf2-hmac-sha256 (\\d{1,9}) (\\S{1,64}) (\\S{1,64})");

    private static final int ROUNDS = 600_000;

    /// A file that asks for more is refused, so that none can keep the computer busy for hours.
    private static final int MOST_ROUNDS = 10_000_000;

    private static final int TAG_BITS = 128;

    private final int rounds;
    private final byte[] salt;
    private final byte[] nonce;

    private Lock(int rounds, byte[] salt, byte[] nonce) {
        this.rounds = rounds;
        this.salt = salt;
        this.nonce = nonce;
    }

    /// A lock that was never used.
    static Lock fresh() {
        SecureRandom chance = new SecureRandom();
        byte[] salt = new byte[16];
        byte[] nonce = new byte[12];
        chance.nextBytes(salt);
        chance.nextBytes(nonce);
        return new Lock(ROUNDS, salt, nonce);
    }

    /// The lock that a first line tells of; empty where it tells of none.
    static Optional<Lock> parse(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        try {
            int rounds = Integer.parseInt(matcher.group(1));
            byte[] salt = Base64.getUrlDecoder().decode(matcher.group(2));
            byte[] nonce = Base64.getUrlDecoder().decode(matcher.group(3));
            boolean isSound =
                    rounds >= 1 && rounds <= MOST_ROUNDS && salt.length > 0 && nonce.length == 12;
            return isSound ? Optional.of(new Lock(rounds, salt, nonce)) : Optional.empty();
        } catch (IllegalArgumentException broken) {
            return Optional.empty();
        }
    }

    /// What seals, for a file that begins with `firstLine`.
    Cipher sealing(Passphrase passphrase, String firstLine) {
        return cipher(Cipher.ENCRYPT_MODE, passphrase, firstLine);
    }

    /// What was sealed in `bytes`, from `at` on.
    ///
    /// @throws RecordsFailure if the passphrase is another one, or a single bit was changed
    byte[] open(Passphrase passphrase, String firstLine, byte[] bytes, int at) {
        try {
            return cipher(Cipher.DECRYPT_MODE, passphrase, firstLine)
                    .doFinal(bytes, at, bytes.length - at);
        } catch (AEADBadTagException wrong) {
            throw new RecordsFailure(new Reason.WrongPassphrase(), wrong);
        } catch (GeneralSecurityException cut) {
            throw new RecordsFailure(new Reason.WrongPassphrase(), cut);
        }
    }

    private Cipher cipher(int mode, Passphrase passphrase, String firstLine) {
        try {
            PBEKeySpec spec = new PBEKeySpec(passphrase.letters(), salt, rounds, 256);
            byte[] key =
                    SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                            .generateSecret(spec)
                            .getEncoded();
            spec.clearPassword();
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD(firstLine.getBytes(StandardCharsets.UTF_8));
            return cipher;
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("Every JDK has AES-GCM and PBKDF2.", impossible);
        }
    }

    @Override
    public String toString() {
        Base64.Encoder letters = Base64.getUrlEncoder().withoutPadding();
        return "aes-256-gcm pbkdf2-hmac-sha256 %d %s %s"
                .formatted(rounds, letters.encodeToString(salt), letters.encodeToString(nonce));
    }
}
