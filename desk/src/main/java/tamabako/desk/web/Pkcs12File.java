package tamabako.desk.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.UnrecoverableKeyException;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/// A certificate and its key in one PKCS#12 file (RFC 7292), locked with a password.
final class Pkcs12File {

    /// A sequence, with which every such file begins and no PEM file does.
    private static final int SEQUENCE = 0x30;

    private Pkcs12File() {}

    static boolean isOne(Path file) throws BadEncryption {
        try (InputStream in = Files.newInputStream(file)) {
            return in.read() == SEQUENCE;
        } catch (IOException failed) {
            throw new BadEncryption(BadEncryption.Reason.NOT_READ, file, failed);
        }
    }

    static CertifiedKey read(Path file, char[] password) throws BadEncryption {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(new ByteArrayInputStream(bytes(file)), password);
            List<String> names = Collections.list(store.aliases());
            Optional<String> name = firstKey(store, names);
            if (name.isEmpty()) {
                throw new BadEncryption(
                        names.isEmpty()
                                ? BadEncryption.Reason.NO_CERTIFICATE
                                : BadEncryption.Reason.NO_KEY,
                        file);
            }
            Certificate[] chain = store.getCertificateChain(name.get());
            if (!(store.getKey(name.get(), password) instanceof PrivateKey key)) {
                throw new BadEncryption(BadEncryption.Reason.NO_KEY, file);
            }
            if (chain == null || chain.length == 0) {
                throw new BadEncryption(BadEncryption.Reason.NO_CERTIFICATE, file);
            }
            return new CertifiedKey(
                    Arrays.stream(chain).map(X509Certificate.class::cast).toList(), key);
        } catch (UnrecoverableKeyException other) {
            throw new BadEncryption(BadEncryption.Reason.WRONG_PASSWORD, file, other);
        } catch (IOException failed) {
            boolean isLocked = failed.getCause() instanceof UnrecoverableKeyException;
            throw new BadEncryption(
                    isLocked ? BadEncryption.Reason.WRONG_PASSWORD : BadEncryption.Reason.BROKEN,
                    file,
                    failed);
        } catch (GeneralSecurityException broken) {
            throw new BadEncryption(BadEncryption.Reason.BROKEN, file, broken);
        }
    }

    private static byte[] bytes(Path file) throws BadEncryption {
        try {
            return Files.readAllBytes(file);
        } catch (IOException failed) {
            throw new BadEncryption(BadEncryption.Reason.NOT_READ, file, failed);
        }
    }

    private static Optional<String> firstKey(KeyStore store, List<String> names)
            throws GeneralSecurityException {
        for (String name : names) {
            if (store.isKeyEntry(name)) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }
}
