package tamabako.records;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/// The groups in the class book.
public final class Groups {

    private final Door door;

    Groups(Door door) {
        this.door = door;
    }

    /// All groups by name.
    public List<Group> all() {
        return door.ask(book ->
                book
                        .createQuery("select id, name, demo from pupil_group")
                        .map((row, _) -> Rows.group(row))
                        .list()
                        .stream()
                        .sorted(Comparator.comparing(Group::name).thenComparing(Group::id))
                        .toList());
    }

    /// The group of this identity, if there is one.
    public Optional<Group> find(String id) {
        return door.ask(book ->
                book.createQuery("select id, name, demo from pupil_group where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.group(row))
                        .findOne());
    }

    /// Puts a group in the book, or its new name.
    public void keep(Group group) {
        door.tell(book -> keep(book, group));
    }

    private static void keep(Handle book, Group group) {
        book.createUpdate(
                        """
                        insert into pupil_group (id, name, demo) values (:id, :name, :demo)
                        on conflict (id) do update set name = excluded.name
                        """)
                .bind("id", group.id())
                .bind("name", group.name())
                .bind("demo", Rows.flag(group.demo()))
                .execute();
    }

    /// Takes a group out of the book. Its pupils and their work go with it: move them first.
    public void remove(String id) {
        door.tell(book ->
                book.createUpdate("delete from pupil_group where id = :id")
                        .bind("id", id)
                        .execute());
    }
}
