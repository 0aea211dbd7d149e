package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import tamabako.problems.grade.ExamOutcome;

/// What came of exams that were sat elsewhere.
public final class ExamOutcomes {

    private static final String SELECT =
            "select id, pupil_id, day, ladder, grade, came, reached from exam_outcome";

    private static final String FORGET =
            """
            delete from exam_outcome where pupil_id = :pupil and day = :day
                and ladder = :ladder and grade = :grade
            """;

    private static final String KEEP =
            """
            insert into exam_outcome (id, pupil_id, day, ladder, grade, came, reached)
            values (:id, :pupil, :day, :ladder, :grade, :came, :reached)
            """;

    private final Door door;

    ExamOutcomes(Door door) {
        this.door = door;
    }

    /// Puts an outcome in the book. What was kept of the same pupil for the same grade on the same
    /// day goes.
    public void keep(KeptOutcome kept) {
        ExamOutcome outcome = kept.outcome();
        door.whole(() -> {
            forget(kept.pupilId(), outcome.day(), outcome.ladder(), outcome.grade());
            door.tell(book -> {
                book.createUpdate(KEEP)
                        .bind("id", kept.id())
                        .bind("pupil", kept.pupilId())
                        .bind("day", outcome.day().toString())
                        .bind("ladder", outcome.ladder())
                        .bind("grade", outcome.grade())
                        .bind("came", outcome.came().word())
                        .bind("reached", outcome.rank())
                        .execute();
                outcome.points()
                        .forEach((section, points) ->
                                book.execute(
                                        "insert into exam_section values (?, ?, ?)",
                                        kept.id(),
                                        section,
                                        points));
            });
        });
    }

    /// Takes what came of one exam for one pupil out of the book.
    public void forget(String pupilId, LocalDate day, String ladder, String grade) {
        door.tell(book ->
                book.createUpdate(FORGET)
                        .bind("pupil", pupilId)
                        .bind("day", day.toString())
                        .bind("ladder", ladder)
                        .bind("grade", grade)
                        .execute());
    }

    /// The outcomes of one pupil, the oldest first.
    public List<KeptOutcome> of(String pupilId) {
        return door.ask(book ->
                book
                        .createQuery(SELECT + " where pupil_id = :pupil order by day, id")
                        .bind("pupil", pupilId)
                        .map((row, _) -> outcome(row))
                        .list()
                        .stream()
                        .map(one -> withPoints(book, one))
                        .toList());
    }

    /// Everything that came of the exams of one day, in no order.
    public List<KeptOutcome> on(LocalDate day) {
        return door.ask(book ->
                book
                        .createQuery(SELECT + " where day = :day")
                        .bind("day", day.toString())
                        .map((row, _) -> outcome(row))
                        .list()
                        .stream()
                        .map(one -> withPoints(book, one))
                        .toList());
    }

    /// The pupils of whom there are any, each once.
    public List<String> pupils() {
        return door.ask(book ->
                book.createQuery("select distinct pupil_id from exam_outcome order by pupil_id")
                        .mapTo(String.class)
                        .list());
    }

    private static KeptOutcome outcome(ResultSet row) throws SQLException {
        String word = row.getString("came");
        return new KeptOutcome(
                row.getString("id"),
                row.getString("pupil_id"),
                new ExamOutcome(
                        LocalDate.parse(row.getString("day")),
                        row.getString("ladder"),
                        row.getString("grade"),
                        ExamOutcome.Came.find(word)
                                .orElseThrow(() ->
                                        new IllegalStateException("Nothing comes " + word + ".")),
                        Optional.ofNullable(row.getString("reached")),
                        Map.of()));
    }

    private static KeptOutcome withPoints(Handle book, KeptOutcome kept) {
        Map<String, Integer> points = new HashMap<>();
        book.createQuery("select section, points from exam_section where outcome_id = :id")
                .bind("id", kept.id())
                .map((row, _) -> points.put(row.getString("section"), row.getInt("points")))
                .list();
        ExamOutcome one = kept.outcome();
        return new KeptOutcome(
                kept.id(),
                kept.pupilId(),
                new ExamOutcome(
                        one.day(), one.ladder(), one.grade(), one.came(), one.rank(), points));
    }
}
