package tamabako.desk.room.journal;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import tamabako.records.Database;

/// A PostgreSQL server for one test.
public final class TestServer implements AutoCloseable {

    private final EmbeddedPostgres server;

    public TestServer() {
        try {
            server =
                    EmbeddedPostgres.builder()
                            .setLocaleConfig("locale", "C")
                            .setLocaleConfig("encoding", "UTF8")
                            // Nothing here has to survive a power cut, and the disk is shared.
                            .setServerConfig("fsync", "off")
                            .start();
        } catch (IOException | RuntimeException failed) {
            throw new IllegalStateException(
                    "PostgreSQL could not be started for the tests. As root it is started in a user"
                            + " namespace: see that `unshare -U true` works here, or run the tests"
                            + " as another user.",
                    failed);
        }
    }

    /// Its database.
    public Database database() {
        String url = "jdbc:postgresql://localhost:" + server.getPort() + "/postgres";
        return new Database.Server(url, "postgres", new Database.Password.None());
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
