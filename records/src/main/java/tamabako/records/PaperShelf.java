package tamabako.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.file.LadderFile;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.json.PaperJson;

/// The papers in the class book. It knows what a printed name stands for: ladder, grade, form,
/// problems, pads, and when it was made.
public final class PaperShelf {

    private final Door door;

    PaperShelf(Door door) {
        this.door = door;
    }

    /// Puts papers in the book, all of them or none.
    public void keep(KeptPapers kept) {
        Paper first = kept.papers().getFirst();
        door.tell(book -> {
            book.createUpdate("insert into paper_set values (?, ?, ?, ?, ?, ?)")
                    .bind(0, kept.id())
                    .bind(1, first.ladder())
                    .bind(2, first.grade().id())
                    .bind(3, kept.papers().size())
                    .bind(4, kept.yaml())
                    .bind(5, Moments.write(kept.madeAt()))
                    .execute();
            for (Paper paper : kept.papers()) {
                book.createUpdate("insert into paper values (?, ?, ?, ?)")
                        .bind(0, paper.id())
                        .bind(1, kept.id())
                        .bind(2, paper.form())
                        .bind(3, PaperJson.line(paper))
                        .execute();
            }
        });
    }

    /// The last `most` sets of forms, the newest first.
    public List<KeptPapers.Entry> latest(int most) {
        return door.ask(book ->
                book.createQuery("select * from paper_set order by made_at desc, id limit :most")
                        .bind("most", most)
                        .map((row, _) -> entry(row))
                        .list());
    }

    /// The forms of this name, if there are such.
    public Optional<KeptPapers> find(String id) {
        return door.ask(book ->
                book.createQuery("select * from paper_set where id = :id")
                        .bind("id", id)
                        .map((row, _) -> new Kept(entry(row), row.getString("yaml")))
                        .findOne()
                        .map(kept -> whole(book, kept)));
    }

    /// The name of the forms that the paper of that printed name is one of, if it is in the book.
    public Optional<String> setOf(String paperId) {
        return door.ask(book ->
                book.createQuery("select set_id from paper where id = :id")
                        .bind("id", paperId)
                        .mapTo(String.class)
                        .findOne());
    }

    /// A set before its forms are read.
    private record Kept(KeptPapers.Entry entry, String yaml) {}

    private static KeptPapers whole(Handle book, Kept kept) {
        Grade grade = grade(kept);
        List<Paper> papers =
                book.createQuery("select paper from paper where set_id = :set order by form")
                        .bind("set", kept.entry().id())
                        .mapTo(String.class)
                        .map(line -> PaperJson.parse(line, grade))
                        .list();
        return new KeptPapers(kept.entry().id(), kept.yaml(), kept.entry().madeAt(), papers);
    }

    private static Grade grade(Kept kept) {
        String name = kept.entry().ladder();
        Optional<Grade> grade =
                LadderFile.read(name, kept.yaml()) instanceof LadderFile.Read(var ladder)
                        ? ladder.grade(kept.entry().grade())
                        : Optional.empty();
        return grade.orElseThrow(() ->
                new RecordsFailure(
                        new Reason.PapersNotRead(kept.entry().id(), name, kept.entry().grade())));
    }

    private static KeptPapers.Entry entry(ResultSet row) throws SQLException {
        return new KeptPapers.Entry(
                row.getString("id"),
                row.getString("ladder"),
                row.getString("grade"),
                row.getInt("forms"),
                Instant.parse(row.getString("made_at")));
    }
}
