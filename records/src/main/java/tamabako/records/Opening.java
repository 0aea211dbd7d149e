package tamabako.records;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationState;

/// Opens the store behind a class book and brings its tables up to date.
final class Opening {

    private static final String MIGRATIONS = "classpath:tamabako/records/migrations";

    private Opening() {}

    /// A store that is open.
    ///
    /// @param isNew whether its tables were made just now
    record Opened(HikariDataSource source, boolean isNew) {}

    static Opened open(Database database) {
        return open(database, "latest");
    }

    /// @param version the migration to stop after
    static Opened open(Database database, String version) {
        HikariConfig config =
                switch (database) {
                    case Database.Embedded(Path file) -> embedded(file);
                    case Database.Server server -> server(server);
                };
        HikariDataSource source = connect(config, database);
        try {
            check(source, database);
            return new Opened(source, migrate(source, database, version));
        } catch (RecordsFailure told) {
            source.close();
            throw told;
        } catch (RuntimeException failed) {
            source.close();
            throw new RecordsFailure(new Reason.NotOpened(database.toString()), failed);
        }
    }

    private static HikariConfig embedded(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException failed) {
            throw new RecordsFailure(new Reason.NoFolder(String.valueOf(folder)), failed);
        }
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + file);
        // One writer at a time is what the embedded database allows; a flush is a few milliseconds.
        config.setMaximumPoolSize(1);
        config.addDataSourceProperty("journal_mode", "WAL");
        config.addDataSourceProperty("synchronous", "FULL");
        config.addDataSourceProperty("busy_timeout", "5000");
        config.addDataSourceProperty("foreign_keys", "true");
        // What is erased is overwritten, not only forgotten.
        config.addDataSourceProperty("secure_delete", "true");
        return config;
    }

    private static HikariConfig server(Database.Server server) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(server.url());
        config.setUsername(server.user());
        PasswordPlace.find(server.password()).ifPresent(config::setPassword);
        config.setMaximumPoolSize(8);
        config.setConnectionTimeout(10_000);
        return config;
    }

    private static HikariDataSource connect(HikariConfig config, Database database) {
        try {
            return new HikariDataSource(config);
        } catch (RuntimeException failed) {
            throw new RecordsFailure(reason(failed, database), failed);
        }
    }

    /// The first two figures of the state that the SQL standard gives: 08 for the connection, 28
    /// for the login.
    private static Reason reason(Throwable failed, Database database) {
        String where = database.toString();
        return switch (database) {
            case Database.Embedded _ -> new Reason.NotOpened(where);
            case Database.Server(_, String user, _) -> {
                String state = state(failed).orElse("");
                yield state.startsWith("08")
                        ? new Reason.NoServer(where)
                        : state.startsWith("28")
                                ? new Reason.NotLetIn(where, user)
                                : new Reason.NotOpened(where);
            }
        };
    }

    private static Optional<String> state(Throwable failed) {
        for (Throwable at = failed; at != null; at = at.getCause()) {
            if (at instanceof SQLException sql) {
                return Optional.ofNullable(sql.getSQLState());
            }
        }
        return Optional.empty();
    }

    private static void check(HikariDataSource source, Database database) {
        if (database instanceof Database.Embedded) {
            return;
        }
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("show server_encoding")) {
            String encoding = row.next() ? String.valueOf(row.getString(1)) : "";
            if (!encoding.equals("UTF8")) {
                throw new RecordsFailure(new Reason.NoUnicode(database.toString(), encoding));
            }
        } catch (SQLException failed) {
            throw new RecordsFailure(new Reason.NotRead(), failed);
        }
    }

    /// Brings the tables up to date; tells whether there were none before.
    private static boolean migrate(HikariDataSource source, Database database, String version) {
        Flyway flyway =
                Flyway.configure().dataSource(source).locations(MIGRATIONS).target(version).load();
        boolean isTooNew =
                Arrays.stream(flyway.info().all())
                        .anyMatch(one -> one.getState() == MigrationState.FUTURE_SUCCESS);
        if (isTooNew) {
            throw new RecordsFailure(new Reason.TooNew(database.toString()));
        }
        boolean isNew = flyway.info().current() == null;
        flyway.migrate();
        return isNew;
    }
}
