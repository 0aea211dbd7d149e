package tamabako.desk.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.Key;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.assertj.core.api.ThrowableAssert;
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

    /// A pair of its own in the file of that name.
    private static void keytool(String file, String alias, String... more) throws Exception {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "keytool")
                                        .toString(),
                                "-genkeypair",
                                "-alias",
                                alias,
                                "-storetype",
                                "PKCS12",
                                "-keystore",
                                folder.resolve(file).toString(),
                                "-storepass",
                                new String(WORD)));
        command.addAll(List.of(more));
        Process keytool = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(keytool.waitFor()).as(said).isZero();
    }

    private static void make(String kind) throws Exception {
        keytool(
                kind + ".p12",
                "desk",
                "-keyalg",
                kind,
                "-dname",
                "CN=localhost",
                "-ext",
                "SAN=dns:localhost");
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

    @Test
    void pagesComeByHttpsWithAPkcs12File() throws Exception {
        List<Route> routes =
                List.of(
                        Route.get(
                                "/say", request -> Reply.json("" + request.caller().encrypted())));
        try (DeskServer desk =
                        DeskServer.start(
                                InetAddress.getLoopbackAddress(),
                                0,
                                List.of(() -> routes),
                                Door.open(),
                                Optional.of(Encryption.read(folder.resolve("EC.p12"), WORD)));
                SSLSocket socket = connect(desk, "EC")) {
            BufferedReader in =
                    new BufferedReader(
                            new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            send(socket, "GET /say HTTP/1.1\r\nHost: localhost\r\n\r\n");
            assertThat(headers(in)).startsWith("HTTP/1.1 200 ");
        }
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
        assertBad("broken.pem", "RSA.key", "no certificate in");
        assertBad("RSA.pem", "RSA.pem", "no private key in");
        assertBad("RSA.pem", "locked.key", "has a password or is written in an older way");
        assertBad("RSA.pem", "EC.key", "does not belong to the certificate");
    }

    @Test
    void whoVouchesForACertificateHasToStandBehindIt() throws Exception {
        keytool("issued.p12", "ca", "-keyalg", "EC", "-dname", "CN=Harbour", "-ext", "bc:c");
        keytool("issued.p12", "desk", "-keyalg", "EC", "-dname", "CN=localhost", "-signer", "ca");
        KeyStore issued = store("issued");
        Key key = issued.getKey("desk", WORD);
        Certificate own = issued.getCertificate("desk");
        Certificate harbour = issued.getCertificate("ca");
        p12("whole.p12", WORD, key, own, harbour);
        assertThat(Encryption.read(folder.resolve("whole.p12"), WORD)).isNotNull();
        p12("alone.p12", WORD, key, own);
        assertBad("alone.p12", WORD, "was issued by \"CN=Harbour\"");

        write("own.key", "PRIVATE KEY", key.getEncoded());
        write("own.pem", "CERTIFICATE", own.getEncoded());
        write("harbour.pem", "CERTIFICATE", harbour.getEncoded());
        String chain =
                Files.readString(folder.resolve("own.pem"))
                        + Files.readString(folder.resolve("harbour.pem"));
        Files.writeString(folder.resolve("chain.pem"), chain);
        assertThat(read("chain.pem", "own.key")).isNotNull();
        assertBad("own.pem", "own.key", "whose own certificate does not follow it");
        Files.writeString(
                folder.resolve("stranger.pem"),
                Files.readString(folder.resolve("own.pem"))
                        + Files.readString(folder.resolve("RSA.pem")));
        assertBad("stranger.pem", "own.key", "was issued by \"CN=Harbour\"");
    }

    @Test
    void aCertificateOutOfItsTimeIsTold() throws Exception {
        String[] all = {"-keyalg", "EC", "-dname", "CN=localhost", "-validity", "10", "-startdate"};
        keytool("over.p12", "desk", with(all, "-30d"));
        keytool("early.p12", "desk", with(all, "+30d"));
        LocalDate today = LocalDate.now(ZoneOffset.UTC);
        assertBad("over.p12", WORD, "ran out on " + today.minusDays(20));
        assertBad("early.p12", WORD, "counts only from " + today.plusDays(30));
    }

    private static String[] with(String[] all, String last) {
        String[] more = Arrays.copyOf(all, all.length + 1);
        more[all.length] = last;
        return more;
    }

    @Test
    void pkcs12FilesThatCannotBeUsedAreTold() throws Exception {
        assertBad("RSA.p12", "another".toCharArray(), "is locked with another password");
        assertBad("RSA.p12", new char[0], "is locked with another password");
        assertBad("nothing.p12", WORD, "nothing.p12 cannot be read");
        byte[] whole = Files.readAllBytes(folder.resolve("RSA.p12"));
        Files.write(folder.resolve("cut.p12"), Arrays.copyOf(whole, whole.length / 2));
        assertBad("cut.p12", WORD, "is cut off, damaged, or no PKCS#12 file");
        p12(
                "mixed.p12",
                WORD,
                store("EC").getKey("desk", WORD),
                store("RSA").getCertificate("desk"));
        assertBad("mixed.p12", WORD, "does not belong to the certificate");
        KeyStore keyless = empty();
        keyless.setCertificateEntry("desk", store("EC").getCertificate("desk"));
        keep("keyless.p12", keyless);
        assertBad("keyless.p12", WORD, "no private key in");
        keep("empty.p12", empty());
        assertBad("empty.p12", WORD, "no certificate in");
        assertThat(Encryption.isPkcs12(folder.resolve("RSA.p12"))).isTrue();
        assertThat(Encryption.isPkcs12(folder.resolve("RSA.pem"))).isFalse();
    }

    private static KeyStore empty() throws Exception {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, WORD);
        return store;
    }

    private static void p12(String name, char[] password, Key key, Certificate... chain)
            throws Exception {
        KeyStore store = empty();
        store.setKeyEntry("desk", key, password, chain);
        keep(name, store);
    }

    private static void keep(String name, KeyStore store) throws Exception {
        try (OutputStream file = Files.newOutputStream(folder.resolve(name))) {
            store.store(file, WORD);
        }
    }

    private static void assertBad(String file, char[] password, String told) {
        assertTold(() -> Encryption.read(folder.resolve(file), password), told);
    }

    private static void assertBad(String certificate, String key, String told) {
        assertTold(() -> read(certificate, key), told);
    }

    private static void assertTold(ThrowableAssert.ThrowingCallable reading, String told) {
        assertThatThrownBy(reading)
                .isInstanceOfSatisfying(
                        BadEncryption.class,
                        bad ->
                                assertThat(bad.say(Languages.of(List.of()).english()))
                                        .contains(told));
    }
}
