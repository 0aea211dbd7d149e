package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;

/// Who came when.
public final class Attendance {

    private static final String SELECT = "select pupil_id, day, how from attendance";

    private final Door door;

    Attendance(Door door) {
        this.door = door;
    }

    /// Notes that a pupil came, came late or did not come. A later word for the same day replaces
    /// an earlier one.
    public void keep(Attended attended) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into attendance (pupil_id, day, how) values (:pupil, :day, :how)
                                on conflict (pupil_id, day) do update set how = excluded.how
                                """)
                        .bind("pupil", attended.pupilId())
                        .bind("day", attended.day().toString())
                        .bind("how", Words.of(attended.how()))
                        .execute());
    }

    /// Takes back what was noted for a pupil and a day.
    public void forget(String pupilId, LocalDate day) {
        door.tell(book ->
                book.createUpdate("delete from attendance where pupil_id = :pupil and day = :day")
                        .bind("pupil", pupilId)
                        .bind("day", day.toString())
                        .execute());
    }

    /// What was noted for one day.
    public List<Attended> on(LocalDate day) {
        return door.ask(book ->
                book.createQuery(SELECT + " where day = :day order by pupil_id")
                        .bind("day", day.toString())
                        .map((row, _) -> attended(row))
                        .list());
    }

    /// What was noted for one pupil, the oldest day first.
    public List<Attended> of(String pupilId) {
        return door.ask(book ->
                book.createQuery(SELECT + " where pupil_id = :pupil order by day")
                        .bind("pupil", pupilId)
                        .map((row, _) -> attended(row))
                        .list());
    }

    private static Attended attended(ResultSet row) throws SQLException {
        return new Attended(
                row.getString("pupil_id"),
                LocalDate.parse(row.getString("day")),
                Words.constant(Attended.How.class, row.getString("how")));
    }
}
