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
        NOT_TOGETHER("not-together"),
        /// The file is locked, and nobody said with which password.
        NO_PASSWORD("no-password"),
        /// The file is locked with another password.
        WRONG_PASSWORD("wrong-password"),
        /// The file begins as PKCS#12 does, but is cut off or damaged.
        BROKEN("broken"),
        /// The key lies in the file of the certificate, and another one was given.
        KEY_INSIDE("key-inside"),
        /// The time of a certificate is over.
        EXPIRED("expired"),
        /// The time of a certificate has not begun.
        NOT_YET("not-yet"),
        /// Those that vouch for the certificate are missing or do not vouch for it.
        NO_CHAIN("no-chain");

        private final String word;

        Reason(String word) {
            this.word = word;
        }
    }

    private final Reason reason;
    private final String file;
    private final String detail;

    /// Nothing more is known than what is wrong with which file.
    public BadEncryption(Reason reason, Path file) {
        this(reason, file, "");
    }

    /// @param detail the day of a certificate, or the name of the one that should vouch for it
    BadEncryption(Reason reason, Path file, String detail) {
        super(reason + ": " + file + " " + detail);
        this.reason = reason;
        this.file = file.toString();
        this.detail = detail;
    }

    /// @param cause what failed below
    public BadEncryption(Reason reason, Path file, Throwable cause) {
        super(reason + ": " + file, cause);
        this.reason = reason;
        this.file = file.toString();
        this.detail = "";
    }

    /// What is wrong.
    public Reason reason() {
        return reason;
    }

    /// The text that tells it to a person.
    public String say(Words words) {
        return words.say("start.encryption." + reason.word, file, detail);
    }
}
