package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/// The results of exams and contests.
public final class Results {

    private final Door door;

    Results(Door door) {
        this.door = door;
    }

    /// Puts a result in the book.
    public void keep(Result result) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into result
                                    (id, pupil_id, kind, name, day, points, most_points, outcome)
                                values (:id, :pupil, :kind, :name, :day, :points, :most, :outcome)
                                """)
                        .bind("id", result.id())
                        .bind("pupil", result.pupilId())
                        .bind("kind", Words.of(result.kind()))
                        .bind("name", result.name())
                        .bind("day", result.day().toString())
                        .bind("points", result.score().map(Result.Score::points))
                        .bind("most", result.score().map(Result.Score::most))
                        .bind("outcome", result.outcome())
                        .execute());
    }

    /// The results of one pupil, the oldest first.
    public List<Result> of(String pupilId) {
        return door.ask(book ->
                book.createQuery(
                                """
                                select id, pupil_id, kind, name, day, points, most_points, outcome
                                from result where pupil_id = :pupil order by day, id
                                """)
                        .bind("pupil", pupilId)
                        .map((row, _) -> result(row))
                        .list());
    }

    /// Takes a result out of the book.
    public void remove(String id) {
        door.tell(book ->
                book.createUpdate("delete from result where id = :id").bind("id", id).execute());
    }

    private static Result result(ResultSet row) throws SQLException {
        int points = row.getInt("points");
        boolean isKnown = !row.wasNull();
        return new Result(
                row.getString("id"),
                row.getString("pupil_id"),
                Words.constant(Result.Kind.class, row.getString("kind")),
                row.getString("name"),
                LocalDate.parse(row.getString("day")),
                isKnown
                        ? Optional.of(new Result.Score(points, row.getInt("most_points")))
                        : Optional.empty(),
                row.getString("outcome"));
    }
}
