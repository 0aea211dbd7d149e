package tamabako.desk.web;

import java.nio.file.Path;

/// The desk cannot be reached by HTTPS with these files.
public final class BadEncryption extends Exception {

    private static final long serialVersionUID = 1L;

    /// What is wrong; each has a text `start.encryption.WORD`.
    public enum Reason {
        /// The file is not there or cannot be read.
        NOT_READ("not-read"),
        /// The file holds no certificate.
        NO_CERTIFICATE("no-certificate"),
        /// The file holds no private key.
        NO_KEY("no-key"),
        /// The private key is locked with a password, or written in an older way.
        OTHER_KEY("other-key"),
        /// The key does not belong to the certificate.
        NOT_TOGETHER("not-together");

        private final String word;

        Reason(String word) {
            this.word = word;
        }
    }

    private final Reason reason;
    private final String file;

    BadEncryption(Reason reason, Path file) {
        super(reason + ": " + file);
        this.reason = reason;
        this.file = file.toString();
    }

    BadEncryption(Reason reason, Path file, Throwable cause) {
        super(reason + ": " + file, cause);
        this.reason = reason;
        this.file = file.toString();
    }

    /// What is wrong.
    public Reason reason() {
        return reason;
    }

    /// The text that tells it to a person.
    public String say(Words words) {
        return words.say("start.encryption." + reason.word, file);
    }
}
