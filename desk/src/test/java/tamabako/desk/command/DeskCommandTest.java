package tamabako.desk.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tamabako.desk.account.Visit;

/// The desk as a program of its own, started and stopped as a teacher does.
class DeskCommandTest {

    @TempDir private Path folder;

    private static String firstLine(Process desk) throws IOException {
        BufferedReader out = desk.inputReader();
        return String.valueOf(out.readLine());
    }

    @Test
    void itPrintsItsAddressServesAndStopsWhenTold() throws IOException, InterruptedException {
        Path data = folder.resolve("lessons");
        Process desk = DeskProgram.start("--data", data.toString(), "--no-password");
        BufferedReader out = desk.inputReader();
        String line = String.valueOf(out.readLine());
        assertThat(line).matches("The desk is open at http://localhost:\\d+/ .*");

        String address = line.replaceFirst(".*(http://\\S+).*", "$1");
        var page =
                HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(URI.create(address)).build(),
                                BodyHandlers.ofString());
        assertThat(page.body()).contains("Tuesday juniors", "Aoi");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(data)))
                .isEqualTo("rwx------");

        desk.toHandle().destroy();
        assertThat(desk.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(out.lines()).isEmpty();
    }

    @Test
    void aNewDeskThatOthersReachPrintsACodeAndAsksForIt() throws IOException {
        Process desk = DeskProgram.start("--data", folder.toString(), "--address", "0.0.0.0");
        try (BufferedReader out = desk.inputReader()) {
            String address = String.valueOf(out.readLine()).replaceFirst(".*(http://\\S+).*", "$1");
            String code = String.valueOf(out.readLine());
            assertThat(code).matches("Set-up code: [0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4} .*");
            Visit visit = new Visit(address);
            assertThat(Visit.next(visit.get("/make"))).isEqualTo("/first");
            String word = "harbour kingfisher ladder";
            assertThat(visit.post("/first", "name", "Mori", "password", word).statusCode())
                    .isEqualTo(400);
            String typed = code.split(" ", 4)[2];
            visit.post("/first", "name", "Mori", "password", word, "code", typed);
            assertThat(visit.get("/").body()).contains("Tuesday juniors", ">Mori</a>");
        } finally {
            desk.destroy();
        }
    }

    @Test
    void withoutAPasswordOnlyThisComputerMayBeLetIn() throws IOException, InterruptedException {
        Process desk =
                DeskProgram.start(
                        "--data", folder.toString(), "--address", "0.0.0.0", "--no-password");
        assertThat(firstLine(desk)).contains("only this computer", "0.0.0.0", "--no-password");
        assertThat(desk.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(desk.exitValue()).isEqualTo(Exit.COULD_NOT_RUN);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aCertificateThatCannotBeReadIsToldAndNothingIsMade()
            throws IOException, InterruptedException {
        Path data = folder.resolve("data");
        Process desk =
                DeskProgram.start(
                        "--data",
                        data.toString(),
                        "--certificate",
                        folder.resolve("none.pem").toString());
        assertThat(firstLine(desk)).contains("none.pem cannot be read");
        assertThat(desk.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(desk.exitValue()).isEqualTo(Exit.COULD_NOT_RUN);
        assertThat(data).doesNotExist();
    }

    @Test
    void aPkcs12FileAsksForItsPasswordAndNeverOnTheCommandLine()
            throws IOException, InterruptedException {
        Path file = folder.resolve("desk.p12");
        Files.write(file, new byte[] {0x30, 0x03, 0x02, 0x01, 0x03});
        assertThat(firstLine(DeskProgram.start("--certificate", file.toString())))
                .contains("is locked with a password", "TAMABAKO_CERTIFICATE_PASSWORD");
        String other = folder.resolve("other.key").toString();
        assertThat(firstLine(DeskProgram.start("--certificate", file.toString(), "--key", other)))
                .contains("Leave --key out");
        Path word = folder.resolve("word.txt");
        assertThat(passwordFrom(word, file)).contains("word.txt cannot be read");
        Files.writeString(word, "harbour\n");
        assertThat(passwordFrom(word, file)).contains("desk.p12 is cut off");
    }

    private String passwordFrom(Path word, Path file) throws IOException {
        return firstLine(
                DeskProgram.start(
                        "--certificate",
                        file.toString(),
                        "--certificate-password-file",
                        word.toString()));
    }

    @Test
    void aPortThatIsTakenIsTold() throws IOException, InterruptedException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = String.valueOf(taken.getLocalPort());
            Process desk = DeskProgram.start("--data", folder.toString(), "--port", port);
            assertThat(firstLine(desk)).contains("Port " + port + " is taken");
            assertThat(desk.waitFor(20, TimeUnit.SECONDS)).isTrue();
            assertThat(desk.exitValue()).isEqualTo(Exit.COULD_NOT_RUN);
        }
    }

    @Test
    void aFileThatIsNoClassBookIsToldAndLeftAlone() throws IOException, InterruptedException {
        Path file = folder.resolve("classbook.sqlite");
        Files.writeString(file, "shopping list");
        Process desk = DeskProgram.start("--data", folder.toString());
        assertThat(firstLine(desk)).contains("The desk was not opened", "classbook.sqlite");
        assertThat(desk.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(desk.exitValue()).isEqualTo(Exit.COULD_NOT_RUN);
        assertThat(Files.readString(file)).isEqualTo("shopping list");
    }
}
