package tamabako.desk.web;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.security.spec.PKCS8EncodedKeySpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/// With what the desk is reached by HTTPS.
///
/// @param context holds the certificate and its key
public record Encryption(SSLContext context) {

    /// Reads both from PEM files, which may be one file.
    ///
    /// @param certificate the certificate of the desk, and behind it those that vouch for it
    /// @param key its private key as PKCS#8 (RSA, elliptic curves or Ed25519), without a password
    /// @throws BadEncryption if they cannot be used
    public static Encryption read(Path certificate, Path key) throws BadEncryption {
        List<Certificate> chain = certificates(certificate);
        PrivateKey secret = key(key);
        if (!isOneKey(chain.getFirst().getPublicKey(), secret)) {
            throw new BadEncryption(BadEncryption.Reason.NOT_TOGETHER, key);
        }
        try {
            char[] none = new char[0];
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, none);
            store.setKeyEntry("desk", secret, none, chain.toArray(Certificate[]::new));
            KeyManagerFactory keys =
                    KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
            keys.init(store, none);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(keys.getKeyManagers(), null, null);
            return new Encryption(context);
        } catch (GeneralSecurityException | IOException failed) {
            throw new BadEncryption(BadEncryption.Reason.NOT_TOGETHER, key, failed);
        }
    }

    private static List<Certificate> certificates(Path file) throws BadEncryption {
        List<Certificate> chain = new ArrayList<>();
        try {
            CertificateFactory factory = CertificateFactory.getInstance("X.509");
            for (Pem block : Pem.read(file)) {
                if (block.label().equals("CERTIFICATE")) {
                    chain.add(factory.generateCertificate(new ByteArrayInputStream(block.bytes())));
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

    /// Whether what the one signs is found right by the other.
    private static boolean isOneKey(PublicKey open, PrivateKey secret) {
        String kind =
                switch (secret.getAlgorithm()) {
                    case "RSA" -> "SHA256withRSA";
                    case "EC" -> "SHA256withECDSA";
                    default -> "EdDSA";
                };
        byte[] sample = {1, 2, 3};
        try {
            Signature signing = Signature.getInstance(kind);
            signing.initSign(secret);
            signing.update(sample);
            Signature checking = Signature.getInstance(kind);
            checking.initVerify(open);
            checking.update(sample);
            return checking.verify(signing.sign());
        } catch (GeneralSecurityException other) {
            return false;
        }
    }
}
