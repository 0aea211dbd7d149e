package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// The open rooms: what each was opened with, and what happened in it, part by part. What a setup
/// and an event say is known to the rooms alone; here they are texts.
public final class RoomLog {

    /// The channel of PostgreSQL on which copies of the program tell each other that a room
    /// changed.
    static final String CHANNEL = "tamabako_room";

    private static final String SELECT = "select id, code, setup, opened_at from room";

    private final Door door;
    private final Database database;

    RoomLog(Door door, Database database) {
        this.door = door;
        this.database = database;
    }

    /// An open room.
    ///
    /// @param id opaque
    /// @param code the code to join it by; no two open rooms have the same
    /// @param setup what it was opened with
    public record Entry(String id, String code, String setup, Instant openedAt) {}

    /// Events that were kept together.
    ///
    /// @param number the number of the last of them; the first event of a room has number 1
    /// @param events one a line
    public record Part(long number, String events) {}

    /// Opens a room.
    public void open(Entry entry) {
        door.tell(book ->
                book.execute(
                        "insert into room (id, code, setup, opened_at, last) values (?, ?, ?, ?, 0)",
                        entry.id(),
                        entry.code(),
                        entry.setup(),
                        Moments.write(entry.openedAt())));
    }

    /// Every open room, the newest first.
    public List<Entry> all() {
        return door.ask(book ->
                book.createQuery(SELECT + " order by opened_at desc, id")
                        .map((row, _) -> entry(row))
                        .list());
    }

    /// The room of that identity, if it is open.
    public Optional<Entry> find(String id) {
        return one("id", id);
    }

    /// The room that is joined by that code, if there is one.
    public Optional<Entry> findByCode(String code) {
        return one("code", code);
    }

    private Optional<Entry> one(String column, String value) {
        return door.ask(book ->
                book.createQuery(SELECT + " where " + column + " = :value")
                        .bind("value", value)
                        .map((row, _) -> entry(row))
                        .findOne());
    }

    /// How many events were kept of each room, by its identity.
    public Map<String, Long> lasts() {
        return door.ask(book ->
                book.createQuery("select id, last from room")
                        .reduceRows(
                                new HashMap<String, Long>(),
                                (lasts, row) -> {
                                    lasts.put(
                                            row.getColumn("id", String.class),
                                            row.getColumn("last", Long.class));
                                    return lasts;
                                }));
    }

    /// The open rooms in which a pupil was: those whose events name the pupil's identity.
    public List<Entry> naming(String pupilId) {
        return door.ask(book ->
                book.createQuery(
                                SELECT
                                        + """
                                         where id in (select room_id from room_part
                                            where events like :named)
                                        order by opened_at desc, id
                                        """)
                        .bind("named", "%\"" + pupilId + "\"%")
                        .map((row, _) -> entry(row))
                        .list());
    }

    /// Keeps everybody else from writing to a room until the transaction is over; to be called
    /// inside [ClassBook#whole].
    ///
    /// @return whether the room is still open
    public boolean lock(String id) {
        return door.ask(book ->
                book.createUpdate("update room set last = last where id = :id")
                                .bind("id", id)
                                .execute()
                        == 1);
    }

    /// What happened after the event of that number.
    public List<Part> after(String id, long number) {
        return door.ask(book ->
                book.createQuery(
                                """
                                select number, events from room_part
                                where room_id = :id and number > :number order by number
                                """)
                        .bind("id", id)
                        .bind("number", number)
                        .map((row, _) -> new Part(row.getLong("number"), row.getString("events")))
                        .list());
    }

    /// Keeps what happened, and tells other copies of the program once it is kept; to be called
    /// inside [ClassBook#whole] after [#lock].
    public void append(String id, Part part) {
        door.tell(book -> {
            book.execute(
                    "insert into room_part (room_id, number, events) values (?, ?, ?)",
                    id,
                    part.number(),
                    part.events());
            book.execute("update room set last = ? where id = ?", part.number(), id);
            tellOthers(id);
        });
    }

    /// Lets a room be joined by another code.
    public void changeCode(String id, String code) {
        door.tell(book -> book.execute("update room set code = ? where id = ?", code, id));
    }

    /// Puts another text in the place of what a room was opened with.
    public void changeSetup(String id, String setup) {
        door.tell(book -> book.execute("update room set setup = ? where id = ?", setup, id));
    }

    /// Puts other events in the place of those that were kept under that number.
    public void change(String id, Part part) {
        door.tell(book ->
                book.execute(
                        "update room_part set events = ? where room_id = ? and number = ?",
                        part.events(),
                        id,
                        part.number()));
    }

    /// Takes a room out of the book, with all that happened in it.
    public void close(String id) {
        door.tell(book -> {
            book.execute("delete from room where id = ?", id);
            tellOthers(id);
        });
    }

    private void tellOthers(String id) {
        switch (database) {
            case Database.Embedded _ -> {}
            case Database.Server _ ->
                    door.ask(book ->
                            book.createQuery("select cast(pg_notify(:channel, :id) as text)")
                                    .bind("channel", CHANNEL)
                                    .bind("id", id)
                                    .mapTo(String.class)
                                    .list());
        }
    }

    private static Entry entry(ResultSet row) throws SQLException {
        return new Entry(
                row.getString("id"),
                row.getString("code"),
                row.getString("setup"),
                Instant.parse(row.getString("opened_at")));
    }
}
