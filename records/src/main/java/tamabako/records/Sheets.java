package tamabako.records;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Sheet;
import tamabako.problems.setting.Paper;

/// The sheets in the class book.
public final class Sheets {

    private static final String SELECT = "select id, title, problems, kept_at, demo from sheet";

    private final Door door;

    Sheets(Door door) {
        this.door = door;
    }

    /// Puts a sheet in the book.
    public void keep(KeptSheet kept) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into sheet (id, title, problems, kept_at, demo)
                                values (:id, :title, :problems, :keptAt, :demo)
                                """)
                        .bind("id", kept.sheet().id())
                        .bind("title", kept.sheet().title())
                        .bind("problems", Rows.problems(kept.sheet()))
                        .bind("keptAt", Moments.write(kept.keptAt()))
                        .bind("demo", Rows.flag(kept.demo()))
                        .execute());
    }

    /// Puts a form of a paper in the book as a sheet that can be worked, under the number that is
    /// printed on the form. What is there already stays.
    ///
    /// @param title what the sheet is called
    /// @param at when
    public void keep(Paper paper, String title, Instant at) {
        door.tell(book ->
                book.createUpdate(
                                """
                                insert into sheet (id, title, problems, kept_at, demo, paper_id)
                                values (:id, :title, :problems, :keptAt, 0, :id)
                                on conflict (id) do nothing
                                """)
                        .bind("id", paper.id())
                        .bind("title", title)
                        .bind(
                                "problems",
                                Rows.problems(new Sheet(paper.id(), title, paper.problems())))
                        .bind("keptAt", Moments.write(at))
                        .execute());
    }

    /// The sheet of this identity, if there is one. A form of a paper that was worked is one too.
    public Optional<KeptSheet> find(String id) {
        return door.ask(book ->
                book.createQuery(SELECT + " where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.sheet(row))
                        .findOne());
    }

    /// The last `most` sheets, the newest first, without the forms of papers.
    public List<KeptSheet> latest(int most) {
        return door.ask(book ->
                book.createQuery(
                                SELECT
                                        + " where paper_id is null order by kept_at desc, id limit :most")
                        .bind("most", most)
                        .map((row, _) -> Rows.sheet(row))
                        .list());
    }
}
