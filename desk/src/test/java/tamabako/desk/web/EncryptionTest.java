package tamabako.desk.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.Key;
import java.security.KeyStore;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/// The desk by HTTPS, with certificates that the JDK's own keytool makes.
class EncryptionTest {

    private static final char[] WORD = "only for this test".toCharArray();

    @TempDir private static Path folder;

    @BeforeAll
    static void make() throws Exception {
        for (String kind : List.of("RSA", "EC", "Ed25519")) {
            make(kind);
        }
    }

    private static void make(String kind) throws Exception {
        Path store = folder.resolve(kind + ".p12");
        Process keytool =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "keytool")
                                        .toString(),
                                "-genkeypair",
                                "-keyalg",
                                kind,
                                "-alias",
                                "desk",
                                "-dname",
                                "CN=localhost",
                                "-ext",
                                "SAN=dns:localhost",
                                "-storetype",
                                "PKCS12",
                                "-keystore",
                                store.toString(),
                                "-storepass",
                                new String(WORD))
                        .redirectErrorStream(true)
                        .start();
        String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(keytool.waitFor()).as(said).isZero();
        Key key = store(kind).getKey("desk", WORD);
        write(kind + ".key", "PRIVATE KEY", key.getEncoded());
        write(kind + ".pem", "CERTIFICATE", store(kind).getCertificate("desk").getEncoded());
    }

    private static KeyStore store(String kind) throws Exception {
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream file = Files.newInputStream(folder.resolve(kind + ".p12"))) {
            store.load(file, WORD);
        }
        return store;
    }

    private static void write(String name, String label, byte[] bytes) throws IOException {
        String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(bytes);
        Files.writeString(
                folder.resolve(name),
                "made for a test\n-----BEGIN %s-----\n%s\n-----END %s-----\n"
                        .formatted(label, text, label));
    }

    private static Encryption read(String certificate, String key) throws BadEncryption {
        return Encryption.read(folder.resolve(certificate), folder.resolve(key));
    }

    private static SSLSocket connect(DeskServer desk, String kind) throws Exception {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, WORD);
        trusted.setCertificateEntry("desk", store(kind).getCertificate("desk"));
        TrustManagerFactory trust =
                TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        SSLSocket socket =
                (SSLSocket)
                        context.getSocketFactory()
                                .createSocket(InetAddress.getLoopbackAddress(), desk.port());
        socket.setSoTimeout(10_000);
        return socket;
    }

    @ParameterizedTest
    @ValueSource(strings = {"RSA", "EC", "Ed25519"})
    void pagesFormsAndStreamsComeByHttps(String kind) throws Exception {
        List<Route> routes =
                List.of(
                        Route.post(
                                "/say",
                                request ->
                                        Reply.json(
                                                request.form().text("a")
                                                        + request.caller().encrypted())),
                        Route.get("/stream", _ -> Reply.stream(out -> out.tell(new Once()))));
        try (DeskServer desk =
                        DeskServer.start(
                                InetAddress.getLoopbackAddress(),
                                0,
                                List.of(() -> routes),
                                Door.open(),
                                Optional.of(read(kind + ".pem", kind + ".key")));
                SSLSocket socket = connect(desk, kind)) {
            assertThat(desk.url()).isEqualTo("https://localhost:%d/".formatted(desk.port()));
            BufferedReader in =
                    new BufferedReader(
                            new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            send(
                    socket,
                    "POST /say HTTP/1.1\r\nHost: localhost\r\nContent-Type:"
                            + " application/x-www-form-urlencoded\r\nContent-Length: 7\r\n\r\n"
                            + "a=beads");
            assertThat(headers(in)).startsWith("HTTP/1.1 200 ").doesNotContain("Strict-Transport");
            char[] body = new char[9];
            assertThat(in.read(body)).isEqualTo(9);
            assertThat(new String(body)).isEqualTo("beadstrue");

            send(socket, "GET /stream HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n");
            assertThat(headers(in)).contains("Strict-Transport-Security: max-age=31536000");
            assertThat(in.readLine()).isEqualTo("told");
            assertThat(in.readLine()).isNull();
        }
    }

    /// Tells one line.
    private static final class Once implements Telling {

        private boolean told;

        @Override
        public Optional<byte[]> next() {
            if (told) {
                return Optional.empty();
            }
            told = true;
            return Optional.of("told\n".getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public boolean isOver() {
            return true;
        }

        @Override
        public void gone() {}
    }

    private static void send(SSLSocket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
    }

    private static String headers(BufferedReader in) throws IOException {
        StringBuilder headers = new StringBuilder();
        for (String line = in.readLine(); line != null && !line.isEmpty(); line = in.readLine()) {
            headers.append(line).append('\n');
        }
        return headers.toString();
    }

    @Test
    void filesThatCannotBeUsedAreTold() throws Exception {
        write("locked.key", "ENCRYPTED PRIVATE KEY", new byte[] {1, 2, 3});
        write("broken.pem", "CERTIFICATE", new byte[] {1, 2, 3});
        assertBad("nothing.pem", "RSA.key", "nothing.pem cannot be read");
        assertBad("RSA.key", "RSA.key", "no certificate in");
        assertBad("RSA.p12", "RSA.key", "no certificate in");
        assertBad("broken.pem", "RSA.key", "no certificate in");
        assertBad("RSA.pem", "RSA.pem", "no private key in");
        assertBad("RSA.pem", "locked.key", "has a password or is written in an older way");
        assertBad("RSA.pem", "EC.key", "does not belong to the certificate");
    }

    private static void assertBad(String certificate, String key, String told) {
        assertThatThrownBy(() -> read(certificate, key))
                .isInstanceOfSatisfying(
                        BadEncryption.class,
                        bad ->
                                assertThat(bad.say(Languages.of(List.of()).english()))
                                        .contains(told));
    }
}
