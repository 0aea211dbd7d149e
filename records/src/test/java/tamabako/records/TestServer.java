package tamabako.records;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;

/// A PostgreSQL server that lives as long as the tests: started once, with a database for whoever
/// asks.
final class TestServer {

    private static final EmbeddedPostgres SERVER = start();

    private TestServer() {}

    private static EmbeddedPostgres start() {
        try {
            EmbeddedPostgres server =
                    EmbeddedPostgres.builder()
                            .setLocaleConfig("locale", "C")
                            .setLocaleConfig("encoding", "UTF8")
                            // Nothing here has to survive a power cut, and the disk is shared.
                            .setServerConfig("fsync", "off")
                            .start();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> stop(server), "stop"));
            return server;
        } catch (IOException | RuntimeException failed) {
            throw new IllegalStateException(
                    "PostgreSQL could not be started for the tests. As root it is started in a user"
                            + " namespace: see that `unshare -U true` works here, or run the tests"
                            + " as another user.",
                    failed);
        }
    }

    private static void stop(EmbeddedPostgres server) {
        try {
            server.close();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /// A new database in those letters.
    static Database.Server fresh(String encoding) {
        String name = "book_" + Identity.fresh().toLowerCase(Locale.ROOT);
        tell("create database " + name + " encoding '" + encoding + "' template template0");
        return named(name);
    }

    /// The database of that name, which need not be there.
    static Database.Server named(String name) {
        String url = "jdbc:postgresql://localhost:" + SERVER.getPort() + "/" + name;
        return new Database.Server(url, "postgres", new Database.Password.None());
    }

    /// Does something as the server's owner.
    static void tell(String sql) {
        try (Connection connection = SERVER.getPostgresDatabase().getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException failed) {
            throw new IllegalStateException(sql, failed);
        }
    }
}
