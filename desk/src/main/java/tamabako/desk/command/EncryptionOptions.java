package tamabako.desk.command;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import tamabako.desk.web.BadEncryption;
import tamabako.desk.web.BadEncryption.Reason;
import tamabako.desk.web.Encryption;

/// Options for a desk that is reached by HTTPS. The password of a PKCS#12 file is never written on
/// the command line, where others can read it.
final class EncryptionOptions {

    private static final String VARIABLE = "TAMABAKO_CERTIFICATE_PASSWORD";

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description =
                    "Opens the desk by HTTPS with this certificate: PEM, with those that vouch for"
                            + " it behind it, or PKCS#12 (.p12, .pfx) with its key.")
    private Optional<Path> certificate = Optional.empty();

    @Option(
            names = "--key",
            paramLabel = "FILE",
            description =
                    "The private key of the certificate (PEM, PKCS#8 without a password); without"
                            + " it, it is looked for in the file of the certificate.")
    private Optional<Path> key = Optional.empty();

    @Option(
            names = "--certificate-password-file",
            paramLabel = "FILE",
            description =
                    "The file whose first line is the password of a PKCS#12 file; without it the"
                            + " variable "
                            + VARIABLE
                            + " is asked, and then you are.")
    private Optional<Path> passwordFile = Optional.empty();

    /// What was given; empty for plain HTTP.
    ///
    /// @throws BadEncryption if the files cannot be used
    Optional<Encryption> read() throws BadEncryption {
        Optional<Path> first = certificate.or(() -> key);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        Path file = first.get();
        if (!Encryption.isPkcs12(file)) {
            return Optional.of(Encryption.read(file, key.orElse(file)));
        }
        if (key.filter(other -> !other.equals(file)).isPresent()) {
            throw new BadEncryption(Reason.KEY_INSIDE, file);
        }
        return Optional.of(Encryption.read(file, password(file)));
    }

    private char[] password(Path file) throws BadEncryption {
        Optional<String> said = written().or(() -> ask("Password of " + file + ": "));
        if (said.isEmpty()) {
            throw new BadEncryption(Reason.NO_PASSWORD, file);
        }
        return said.get().toCharArray();
    }

    private Optional<String> written() throws BadEncryption {
        if (passwordFile.isEmpty()) {
            return Optional.ofNullable(System.getenv(VARIABLE));
        }
        try (Stream<String> lines = Files.lines(passwordFile.get())) {
            return Optional.of(lines.findFirst().orElse(""));
        } catch (IOException failed) {
            throw new BadEncryption(Reason.NOT_READ, passwordFile.get(), failed);
        }
    }

    private static Optional<String> ask(String question) {
        return Optional.ofNullable(System.console())
                .filter(Console::isTerminal)
                .flatMap(console -> Optional.ofNullable(console.readPassword("%s", question)))
                .map(String::new);
    }
}
