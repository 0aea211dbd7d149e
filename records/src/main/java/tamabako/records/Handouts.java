package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/// Which sheets were handed out to whom.
public final class Handouts {

    private static final String SELECT =
            "select id, sheet_id, group_id, pupil_id, handed_out_at from handout";

    private final Door door;

    Handouts(Door door) {
        this.door = door;
    }

    /// Puts a handout in the book.
    public void keep(Handout handout) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into handout (id, sheet_id, group_id, pupil_id, handed_out_at)
                                values (:id, :sheet, :group, :pupil, :at)
                                """)
                        .bind("id", handout.id())
                        .bind("sheet", handout.sheetId())
                        .bind("group", handout.groupId())
                        .bind("pupil", handout.pupilId())
                        .bind("at", Moments.write(handout.at()))
                        .execute());
    }

    /// What one pupil was handed, alone or with the group, the oldest first.
    public List<Handout> of(Pupil pupil) {
        return door.ask(book ->
                book.createQuery(
                                SELECT
                                        + """
                                         where pupil_id = :pupil
                                            or (pupil_id is null and group_id = :group)
                                        order by handed_out_at, id
                                        """)
                        .bind("pupil", pupil.id())
                        .bind("group", pupil.groupId())
                        .map((row, _) -> handout(row))
                        .list());
    }

    /// To whom one sheet was handed, the oldest first.
    public List<Handout> ofSheet(String sheetId) {
        return door.ask(book ->
                book.createQuery(SELECT + " where sheet_id = :sheet order by handed_out_at, id")
                        .bind("sheet", sheetId)
                        .map((row, _) -> handout(row))
                        .list());
    }

    /// Takes a handout out of the book.
    public void remove(String id) {
        door.tell(book ->
                book.createUpdate("delete from handout where id = :id").bind("id", id).execute());
    }

    private static Handout handout(ResultSet row) throws SQLException {
        return new Handout(
                row.getString("id"),
                row.getString("sheet_id"),
                row.getString("group_id"),
                Optional.ofNullable(row.getString("pupil_id")),
                Instant.parse(row.getString("handed_out_at")));
    }
}
