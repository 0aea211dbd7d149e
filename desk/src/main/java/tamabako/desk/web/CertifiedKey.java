package tamabako.desk.web;

import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.cert.CertificateExpiredException;
import java.security.cert.CertificateNotYetValidException;
import java.security.cert.X509Certificate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;

/// A certificate with those that vouch for it behind it, and its private key.
record CertifiedKey(List<X509Certificate> chain, PrivateKey key) {

    CertifiedKey {
        chain = List.copyOf(chain);
    }

    /// Looks whether browsers that know the authority will take it.
    ///
    /// @param certificate the file of the chain, for the message
    /// @param secret the file of the key
    void check(Path certificate, Path secret) throws BadEncryption {
        if (!isOneKey(chain.getFirst().getPublicKey(), key)) {
            throw new BadEncryption(BadEncryption.Reason.NOT_TOGETHER, secret);
        }
        for (X509Certificate one : chain) {
            checkTime(one, certificate);
        }
        for (int i = 0; i < chain.size(); i++) {
            // The last one has nobody behind it: alone it has to vouch for itself.
            X509Certificate next = chain.get(Math.min(i + 1, chain.size() - 1));
            boolean isLast = i == chain.size() - 1;
            if (!(isLast && i > 0) && !isIssuedBy(chain.get(i), next)) {
                throw new BadEncryption(
                        BadEncryption.Reason.NO_CHAIN,
                        certificate,
                        chain.get(i).getIssuerX500Principal().getName());
            }
        }
    }

    private static void checkTime(X509Certificate one, Path file) throws BadEncryption {
        try {
            one.checkValidity();
        } catch (CertificateExpiredException over) {
            throw new BadEncryption(BadEncryption.Reason.EXPIRED, file, day(one.getNotAfter()));
        } catch (CertificateNotYetValidException early) {
            throw new BadEncryption(BadEncryption.Reason.NOT_YET, file, day(one.getNotBefore()));
        }
    }

    private static String day(Date moment) {
        return moment.toInstant().atZone(ZoneOffset.UTC).toLocalDate().toString();
    }

    private static boolean isIssuedBy(X509Certificate one, X509Certificate authority) {
        try {
            one.verify(authority.getPublicKey());
            return one.getIssuerX500Principal().equals(authority.getSubjectX500Principal());
        } catch (GeneralSecurityException other) {
            return false;
        }
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
