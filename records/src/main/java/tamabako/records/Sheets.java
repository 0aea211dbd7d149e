package tamabako.records;

import java.util.List;
import java.util.Optional;

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

    /// The sheet of this identity, if there is one.
    public Optional<KeptSheet> find(String id) {
        return door.ask(book ->
                book.createQuery(SELECT + " where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.sheet(row))
                        .findOne());
    }

    /// The last `most` sheets, the newest first.
    public List<KeptSheet> latest(int most) {
        return door.ask(book ->
                book.createQuery(SELECT + " order by kept_at desc, id limit :most")
                        .bind("most", most)
                        .map((row, _) -> Rows.sheet(row))
                        .list());
    }
}
