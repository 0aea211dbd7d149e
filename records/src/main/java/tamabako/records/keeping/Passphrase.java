package tamabako.records.keeping;

import java.text.Normalizer;
import java.util.Optional;
import tamabako.records.Reason;
import tamabako.records.RecordsFailure;

/// The words that lock a backup. The same words typed on another keyboard, wide or narrow letters,
/// are the same passphrase (NIST SP 800-63B asks for the normal form NFKC).
public final class Passphrase {

    /// The fewest characters, as OWASP ASVS 5.0.0, V6.2.1, asks of passwords.
    public static final int LEAST = 8;

    private final String words;

    private Passphrase(String words) {
        this.words = words;
    }

    /// The passphrase for a new backup.
    ///
    /// @throws RecordsFailure if it is shorter than [#LEAST]
    public static Passphrase choose(String written) {
        Passphrase chosen = new Passphrase(normal(written));
        if (chosen.words.codePointCount(0, chosen.words.length()) < LEAST) {
            throw new RecordsFailure(new Reason.ShortPassphrase(LEAST));
        }
        return chosen;
    }

    /// What was typed to open a backup; empty where nothing was typed.
    public static Optional<Passphrase> typed(String written) {
        String words = normal(written);
        return words.isEmpty() ? Optional.empty() : Optional.of(new Passphrase(words));
    }

    private static String normal(String written) {
        return Normalizer.normalize(written, Normalizer.Form.NFKC).strip();
    }

    char[] letters() {
        return words.toCharArray();
    }

    @Override
    public String toString() {
        return "a passphrase";
    }
}
