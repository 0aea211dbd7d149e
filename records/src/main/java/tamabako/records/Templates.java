package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// The templates in the class book.
public final class Templates {

    private final Door door;

    Templates(Door door) {
        this.door = door;
    }

    /// Puts the fields of a wish in the book under `name`. A template of that name is replaced and
    /// keeps its identity.
    public void keep(String name, String fields, Instant now) {
        door.tell(book ->
                book.createUpdate(
                                "insert into template (id, name, fields, kept_at)"
                                        + " values (:id, :name, :fields, :now)"
                                        + " on conflict (name) do update"
                                        + " set fields = excluded.fields, kept_at = excluded.kept_at")
                        .bind("id", Identity.fresh())
                        .bind("name", name)
                        .bind("fields", fields)
                        .bind("now", Moments.write(now))
                        .execute());
    }

    /// All templates by name.
    public List<Template> all() {
        return door.ask(book ->
                book.createQuery("select * from template order by name")
                        .map((row, _) -> template(row))
                        .list());
    }

    /// The template of this identity, if there is one.
    public Optional<Template> find(String id) {
        return door.ask(book ->
                book.createQuery("select * from template where id = :id")
                        .bind("id", id)
                        .map((row, _) -> template(row))
                        .findOne());
    }

    /// Takes a template out of the book; nothing happens where there is none.
    public void remove(String id) {
        door.tell(book ->
                book.createUpdate("delete from template where id = :id").bind("id", id).execute());
    }

    private static Template template(ResultSet row) throws SQLException {
        return new Template(
                row.getString("id"),
                row.getString("name"),
                row.getString("fields"),
                Instant.parse(row.getString("kept_at")));
    }
}
