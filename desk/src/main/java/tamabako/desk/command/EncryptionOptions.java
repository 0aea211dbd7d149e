package tamabako.desk.command;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import tamabako.desk.web.BadEncryption;
import tamabako.desk.web.Encryption;

/// Options for a desk that is reached by HTTPS.
final class EncryptionOptions {

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description = "Opens the desk by HTTPS with this certificate (PEM).")
    private Optional<Path> certificate = Optional.empty();

    @Option(
            names = "--key",
            paramLabel = "FILE",
            description =
                    "The private key of the certificate (PEM, PKCS#8 without a password); without"
                            + " it, it is looked for in the file of the certificate.")
    private Optional<Path> key = Optional.empty();

    /// What was given; empty for plain HTTP.
    ///
    /// @throws BadEncryption if the files cannot be used
    Optional<Encryption> read() throws BadEncryption {
        Optional<Path> first = certificate.or(() -> key);
        return first.isEmpty()
                ? Optional.empty()
                : Optional.of(Encryption.read(first.get(), key.orElse(first.get())));
    }
}
