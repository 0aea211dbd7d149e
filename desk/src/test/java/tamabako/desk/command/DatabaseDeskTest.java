package tamabako.desk.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tamabako.desk.BookServer;
import tamabako.records.ClassBook;
import tamabako.records.Database;
import tamabako.records.demo.DemoClass;

/// The desk and the command over a class book in PostgreSQL.
class DatabaseDeskTest {

    private static BookServer server;

    @TempDir Path folder;

    @BeforeAll
    static void start() {
        server = new BookServer();
    }

    @AfterAll
    static void stop() throws IOException {
        server.close();
    }

    @Test
    void theDeskBeginsABookInTheDatabaseAndFindsItAgain() throws IOException, InterruptedException {
        String address = server.make("lessons");
        for (int start = 0; start < 2; start++) {
            Process desk = DeskProgram.start("--database", address);
            String line = String.valueOf(desk.inputReader().readLine());
            assertThat(line)
                    .matches("The desk is open at http://localhost:\\d+/ .*")
                    .contains("/lessons");
            String url = line.replaceFirst(".*(http://\\S+).*", "$1");
            int status =
                    HttpClient.newHttpClient()
                            .send(
                                    HttpRequest.newBuilder(URI.create(url)).build(),
                                    BodyHandlers.ofString())
                            .statusCode();
            assertThat(status).isLessThan(400);
            desk.toHandle().destroy();
            assertThat(desk.waitFor(20, TimeUnit.SECONDS)).isTrue();
        }
        try (ClassBook book = ClassBook.open(at(address))) {
            assertThat(book.pupils().all()).hasSize(14);
            assertThat(book.isNew()).isFalse();
        }
    }

    @Test
    void aDatabaseThatDoesNotAnswerIsTold() throws IOException, InterruptedException {
        Process desk = DeskProgram.start("--database", "postgresql://localhost:1/lessons");
        assertThat(String.valueOf(desk.inputReader().readLine()))
                .contains("The desk was not opened", "No database answers");
        assertThat(desk.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(desk.exitValue()).isEqualTo(Exit.COULD_NOT_RUN);
    }

    @Test
    void aBookIsMovedToTheDatabaseAndBackByTheCommand() {
        Path file = folder.resolve("classbook.sqlite");
        try (ClassBook book = ClassBook.open(file)) {
            DemoClass.fill(book, Instant.now());
        }
        String address = server.make("moved");
        Path back = folder.resolve("back.sqlite");

        assertThat(move(file.toString(), address)).contains("Moved and checked", "14 pupils");
        assertThat(move(address, back.toString())).contains("Moved and checked", "14 pupils");

        try (ClassBook before = ClassBook.open(file);
                ClassBook after = ClassBook.open(back)) {
            assertThat(after.pupils().all()).isEqualTo(before.pupils().all());
            assertThat(after.work().latest(999)).isEqualTo(before.work().latest(999));
        }
        assertThat(move(file.toString(), file.toString())).contains("the same class book");
        assertThat(move(folder.resolve("no.sqlite").toString(), address))
                .contains("There is no class book at");
    }

    private static Database at(String address) {
        return Database.parse(address, new Database.Password.None());
    }

    private static String move(String from, String to) {
        StringWriter err = new StringWriter();
        new CommandLine(new ClassbookMove())
                .setErr(new PrintWriter(err, true))
                .setExecutionExceptionHandler((failed, line, _) -> {
                    line.getErr().println(failed.getMessage());
                    return Exit.COULD_NOT_RUN;
                })
                .execute("--from", from, "--to", to);
        return err.toString();
    }
}
