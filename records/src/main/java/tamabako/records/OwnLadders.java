package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// The teacher's own ladders in the class book.
public final class OwnLadders {

    private final Door door;

    OwnLadders(Door door) {
        this.door = door;
    }

    /// Puts a ladder in the book; one of the same name is replaced.
    public void keep(OwnLadder ladder) {
        door.tell(book ->
                book.createUpdate(
                                "insert into own_ladder (id, yaml, kept_at)"
                                        + " values (:id, :yaml, :now)"
                                        + " on conflict (id) do update"
                                        + " set yaml = excluded.yaml, kept_at = excluded.kept_at")
                        .bind("id", ladder.id())
                        .bind("yaml", ladder.yaml())
                        .bind("now", Moments.write(ladder.keptAt()))
                        .execute());
    }

    /// All of them by name.
    public List<OwnLadder> all() {
        return door.ask(book ->
                book.createQuery("select * from own_ladder order by id")
                        .map((row, _) -> ladder(row))
                        .list());
    }

    /// The ladder that goes by that name, if there is one.
    public Optional<OwnLadder> find(String id) {
        return door.ask(book ->
                book.createQuery("select * from own_ladder where id = :id")
                        .bind("id", id)
                        .map((row, _) -> ladder(row))
                        .findOne());
    }

    /// Takes a ladder out of the book. Papers that were made by it stay.
    public void remove(String id) {
        door.tell(book ->
                book.createUpdate("delete from own_ladder where id = :id")
                        .bind("id", id)
                        .execute());
    }

    private static OwnLadder ladder(ResultSet row) throws SQLException {
        return new OwnLadder(
                row.getString("id"),
                row.getString("yaml"),
                Instant.parse(row.getString("kept_at")));
    }
}
