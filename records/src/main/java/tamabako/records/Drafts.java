package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/// The drafts in the class book: typing that a closed window or a power cut must not take away.
public final class Drafts {

    private static final String SELECT = "select sheet_id, pupil_id, written, took from draft";

    private final Door door;

    Drafts(Door door) {
        this.door = door;
    }

    /// Puts a draft in the book in the place of the one for the same sheet and pupil.
    public void keep(Draft draft) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into draft (sheet_id, pupil_id, written, took)
                                values (:sheet, :pupil, :written, :took)
                                on conflict (sheet_id, pupil_id) do update set
                                    written = excluded.written, took = excluded.took
                                """)
                        .bind("sheet", draft.sheetId())
                        .bind("pupil", draft.pupilId())
                        .bind("written", String.join("\n", draft.written()))
                        .bind("took", draft.took())
                        .execute());
    }

    /// The drafts for one sheet.
    public List<Draft> ofSheet(String sheetId) {
        return all("sheet_id", sheetId);
    }

    /// The drafts of one pupil.
    public List<Draft> of(String pupilId) {
        return all("pupil_id", pupilId);
    }

    private List<Draft> all(String column, String id) {
        return door.ask(book ->
                book.createQuery(SELECT + " where " + column + " = :id order by sheet_id, pupil_id")
                        .bind("id", id)
                        .map((row, _) -> draft(row))
                        .list());
    }

    /// Takes a draft out of the book, for it was handed in or thrown away.
    public void forget(String sheetId, String pupilId) {
        door.tell(book ->
                book.createUpdate("delete from draft where sheet_id = :sheet and pupil_id = :pupil")
                        .bind("sheet", sheetId)
                        .bind("pupil", pupilId)
                        .execute());
    }

    private static Draft draft(ResultSet row) throws SQLException {
        return new Draft(
                row.getString("sheet_id"),
                row.getString("pupil_id"),
                List.of(row.getString("written").split("\n", -1)),
                row.getString("took"));
    }
}
