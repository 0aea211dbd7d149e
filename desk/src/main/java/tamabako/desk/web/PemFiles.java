package tamabako.desk.web;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.cert.CertificateFactory;
import java.security.cert.X509Certificate;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// A certificate and its key in PEM files (RFC 7468).
final class PemFiles {

    private PemFiles() {}

    static CertifiedKey read(Path certificate, Path key) throws BadEncryption {
        return new CertifiedKey(certificates(certificate), key(key));
    }

    private static List<X509Certificate> certificates(Path file) throws BadEncryption {
        List<X509Certificate> chain = new ArrayList<>();
        try {
            CertificateFactory factory = CertificateFactory.getInstance("X.509");
            for (Pem block : Pem.read(file)) {
                if (block.label().equals("CERTIFICATE")) {
                    chain.add(
                            (X509Certificate)
                                    factory.generateCertificate(
                                            new ByteArrayInputStream(block.bytes())));
                }
            }
        } catch (GeneralSecurityException broken) {
            throw new BadEncryption(BadEncryption.Reason.NO_CERTIFICATE, file, broken);
        }
        if (chain.isEmpty()) {
            throw new BadEncryption(BadEncryption.Reason.NO_CERTIFICATE, file);
        }
        return chain;
    }

    private static PrivateKey key(Path file) throws BadEncryption {
        boolean isOther = false;
        for (Pem block : Pem.read(file)) {
            if (block.label().equals("PRIVATE KEY")) {
                return key(block)
                        .orElseThrow(() -> new BadEncryption(BadEncryption.Reason.OTHER_KEY, file));
            }
            isOther |= block.label().endsWith(" PRIVATE KEY");
        }
        throw new BadEncryption(
                isOther ? BadEncryption.Reason.OTHER_KEY : BadEncryption.Reason.NO_KEY, file);
    }

    private static Optional<PrivateKey> key(Pem block) {
        for (String kind : List.of("RSA", "EC", "EdDSA")) {
            try {
                KeyFactory factory = KeyFactory.getInstance(kind);
                return Optional.of(factory.generatePrivate(new PKCS8EncodedKeySpec(block.bytes())));
            } catch (GeneralSecurityException another) {
                // Then it is of another kind.
            }
        }
        return Optional.empty();
    }
}
