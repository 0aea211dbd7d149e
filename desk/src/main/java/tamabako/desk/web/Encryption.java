package tamabako.desk.web;

import java.io.IOException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
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
        return of(PemFiles.read(certificate, key), certificate, key);
    }

    /// Reads both from one PKCS#12 file (RFC 7292), such as `desk.p12` or `desk.pfx`.
    ///
    /// @param password that of the file and of the key in it
    /// @throws BadEncryption if it cannot be used
    public static Encryption read(Path file, char[] password) throws BadEncryption {
        return of(Pkcs12File.read(file, password), file, file);
    }

    /// Whether a file looks like PKCS#12, which has a password, and not like PEM.
    ///
    /// @throws BadEncryption if it cannot be read
    public static boolean isPkcs12(Path file) throws BadEncryption {
        return Pkcs12File.isOne(file);
    }

    private static Encryption of(CertifiedKey certified, Path certificate, Path key)
            throws BadEncryption {
        certified.check(certificate, key);
        try {
            char[] none = new char[0];
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, none);
            store.setKeyEntry(
                    "desk", certified.key(), none, certified.chain().toArray(Certificate[]::new));
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
}
