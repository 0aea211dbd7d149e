package tamabako.desk;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import tamabako.records.Database;

/// A PostgreSQL server for one test, with as many databases as are asked for.
public final class BookServer implements AutoCloseable {

    private final EmbeddedPostgres server;

    public BookServer() {
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

    /// A new database of that name, as a person writes its address.
    public String make(String name) {
        try (Connection connection = server.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException failed) {
            throw new IllegalStateException(failed);
        }
        return "postgresql://postgres@localhost:%d/%s".formatted(server.getPort(), name);
    }

    /// The database that every server has from the beginning.
    public Database database() {
        String url = "jdbc:postgresql://localhost:" + server.getPort() + "/postgres";
        return new Database.Server(url, "postgres", new Database.Password.None());
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
