package tamabako.records;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/// The work that was handed in, answer by answer.
public final class WorkDone {

    private static final String SELECT =
            "select id, sheet_id, pupil_id, handed_at, took_ms from work";

    private static final String KEEP =
            """
            insert into work (id, sheet_id, pupil_id, handed_at, took_ms)
            values (:id, :sheet, :pupil, :handedAt, :took)
            on conflict (id) do nothing
            """;

    private static final String KEEP_ANSWER =
            """
            insert into work_answer (work_id, position, written, mark, took_ms)
            values (:work, :position, :written, :mark, :took)
            """;

    private final Door door;

    WorkDone(Door door) {
        this.door = door;
    }

    /// Puts work with all its answers in the book, whole or not at all. Work that is there already
    /// under its identity stays as it is, so that a sender may hand in again what it is not sure
    /// of.
    public void keep(Work work) {
        door.tell(book -> {
            int rows =
                    book.createUpdate(KEEP)
                            .bind("id", work.id())
                            .bind("sheet", work.sheetId())
                            .bind("pupil", work.pupilId())
                            .bind("handedAt", Moments.write(work.handedAt()))
                            .bind("took", work.took().map(took -> took.toMillis()))
                            .execute();
            if (rows == 1) {
                keepAnswers(book, work);
            }
        });
    }

    /// Puts other answers and another time in the place of those that were kept for this work. Its
    /// sheet, its pupil and when it was handed in stay. Work that is not in the book stays out of
    /// it.
    public void correct(Work work) {
        door.tell(book -> {
            int rows =
                    book.createUpdate("update work set took_ms = :took where id = :id")
                            .bind("id", work.id())
                            .bind("took", work.took().map(took -> took.toMillis()))
                            .execute();
            if (rows == 1) {
                book.createUpdate("delete from work_answer where work_id = :id")
                        .bind("id", work.id())
                        .execute();
                keepAnswers(book, work);
            }
        });
    }

    /// Puts work in the book in the place of what is there under its identity.
    public void keepAnew(Work work) {
        door.whole(() -> {
            door.tell(book -> book.execute("delete from work where id = ?", work.id()));
            keep(work);
        });
    }

    private static void keepAnswers(Handle book, Work work) {
        PreparedBatch batch = book.prepareBatch(KEEP_ANSWER);
        int position = 0;
        for (Work.MarkedAnswer answer : work.answers()) {
            batch.bind("work", work.id())
                    .bind("position", ++position)
                    .bind("written", answer.written())
                    .bind("mark", answer.mark())
                    .bind("took", answer.took().map(took -> took.toMillis()))
                    .add();
        }
        if (position > 0) {
            batch.execute();
        }
    }

    /// The last `most` pieces of work, the newest first.
    public List<Work> latest(int most) {
        return door.ask(book ->
                book
                        .createQuery(SELECT + " order by handed_at desc, id limit :most")
                        .bind("most", most)
                        .map((row, _) -> Rows.workWithoutAnswers(row))
                        .list()
                        .stream()
                        .map(work -> withAnswers(book, work))
                        .toList());
    }

    /// All work of one pupil, the oldest first.
    public List<Work> of(String pupilId) {
        return door.ask(book ->
                book
                        .createQuery(SELECT + " where pupil_id = :pupil order by handed_at, id")
                        .bind("pupil", pupilId)
                        .map((row, _) -> Rows.workWithoutAnswers(row))
                        .list()
                        .stream()
                        .map(work -> withAnswers(book, work))
                        .toList());
    }

    /// All work on one sheet, the oldest first.
    public List<Work> ofSheet(String sheetId) {
        return door.ask(book ->
                book
                        .createQuery(SELECT + " where sheet_id = :sheet order by handed_at, id")
                        .bind("sheet", sheetId)
                        .map((row, _) -> Rows.workWithoutAnswers(row))
                        .list()
                        .stream()
                        .map(work -> withAnswers(book, work))
                        .toList());
    }

    /// The pupils who have handed in work on a form of a paper, each once.
    public List<String> pupilsOfPapers() {
        return door.ask(book ->
                book.createQuery(
                                """
                                select distinct work.pupil_id from work
                                join sheet on sheet.id = work.sheet_id
                                where work.pupil_id is not null and sheet.paper_id is not null
                                order by work.pupil_id
                                """)
                        .mapTo(String.class)
                        .list());
    }

    /// The piece of work of this identity, if there is one.
    public Optional<Work> find(String id) {
        return door.ask(book ->
                book.createQuery(SELECT + " where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.workWithoutAnswers(row))
                        .findOne()
                        .map(work -> withAnswers(book, work)));
    }

    private static Work withAnswers(Handle book, Work work) {
        List<Work.MarkedAnswer> answers =
                book.createQuery(
                                """
                                select written, mark, took_ms from work_answer
                                where work_id = :work order by position
                                """)
                        .bind("work", work.id())
                        .map((row, _) -> Rows.answer(row))
                        .list();
        return work.answered(answers);
    }
}
