package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// The teachers and assistants in the class book.
public final class Teachers {

    private final Door door;

    Teachers(Door door) {
        this.door = door;
    }

    /// All of them by name.
    public List<Teacher> all() {
        return door.ask(book ->
                book
                        .createQuery("select id, name, role, demo from teacher")
                        .map((row, _) -> teacher(row))
                        .list()
                        .stream()
                        .sorted(Comparator.comparing(Teacher::name).thenComparing(Teacher::id))
                        .toList());
    }

    /// The one of that identity, if they are in the book.
    public Optional<Teacher> find(String id) {
        return door.ask(book ->
                book.createQuery("select id, name, role, demo from teacher where id = :id")
                        .bind("id", id)
                        .map((row, _) -> teacher(row))
                        .findOne());
    }

    private static Teacher teacher(ResultSet row) throws SQLException {
        return new Teacher(
                row.getString("id"),
                row.getString("name"),
                Words.constant(Teacher.Role.class, row.getString("role")),
                row.getBoolean("demo"));
    }

    /// Puts someone in the book, or what is new about them.
    public void keep(Teacher teacher) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into teacher (id, name, role, demo)
                                values (:id, :name, :role, :demo)
                                on conflict (id) do update set
                                    name = excluded.name, role = excluded.role
                                """)
                        .bind("id", teacher.id())
                        .bind("name", teacher.name())
                        .bind("role", Words.of(teacher.role()))
                        .bind("demo", Rows.flag(teacher.demo()))
                        .execute());
    }

    /// Takes someone out of the book. Notes they wrote stay, without their name.
    public void remove(String id) {
        door.tell(book ->
                book.createUpdate("delete from teacher where id = :id").bind("id", id).execute());
    }
}
