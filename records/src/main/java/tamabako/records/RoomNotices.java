package tamabako.records;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import java.util.function.Consumer;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;

/// Listens to what other copies of the program over one database say about the rooms. The notices
/// are those of PostgreSQL; the embedded store has one program only, and nothing to listen to.
public final class RoomNotices implements AutoCloseable {

    /// What is said after the connection was lost: any room may have changed.
    public static final String ANY = "";

    /// How long one look for notices lasts, in milliseconds, before closing is noticed.
    private static final int LOOK = 1_000;

    private final Consumer<String> heard;
    private final Thread ear;
    private volatile boolean closed;

    private RoomNotices(Database.Server server, Consumer<String> heard) {
        this.heard = heard;
        this.ear = Thread.ofPlatform().daemon().name("room-notices").unstarted(() -> run(server));
    }

    /// Listens from now on.
    ///
    /// @param heard is given the identity of each room that changed, or [#ANY]
    public static AutoCloseable listen(Database database, Consumer<String> heard) {
        return switch (database) {
            case Database.Embedded _ -> () -> {};
            case Database.Server server -> {
                RoomNotices notices = new RoomNotices(server, heard);
                notices.ear.start();
                yield notices;
            }
        };
    }

    private void run(Database.Server server) {
        while (!closed) {
            try (Connection connection = connect(server)) {
                listen(connection);
            } catch (SQLException lost) {
                rest();
            }
        }
    }

    private static Connection connect(Database.Server server) throws SQLException {
        Properties login = new Properties();
        login.setProperty("user", server.user());
        PasswordPlace.find(server.password())
                .ifPresent(password -> login.setProperty("password", password));
        return DriverManager.getConnection(server.url(), login);
    }

    private void listen(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("listen " + RoomLog.CHANNEL);
        }
        heard.accept(ANY);
        PGConnection postgres = connection.unwrap(PGConnection.class);
        while (!closed) {
            for (PGNotification notice : postgres.getNotifications(LOOK)) {
                heard.accept(notice.getParameter());
            }
        }
    }

    private void rest() {
        try {
            Thread.sleep(LOOK);
        } catch (InterruptedException stopped) {
            closed = true;
        }
    }

    @Override
    public void close() {
        closed = true;
        ear.interrupt();
    }
}
