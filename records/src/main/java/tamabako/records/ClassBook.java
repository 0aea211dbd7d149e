package tamabako.records;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/// The class book, open for reading and writing by any number of threads.
///
/// Methods throw [RecordsFailure] when the disk or the database fails.
public final class ClassBook implements AutoCloseable {

    private final HikariDataSource source;
    private final Transactions book;

    private ClassBook(HikariDataSource source) {
        this.source = source;
        this.book = new Transactions(Jdbi.create(source));
    }

    /// Opens the class book in `file`, which is made if it is not there, and brings its tables up
    /// to date.
    public static ClassBook open(Path file) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
        } catch (IOException failed) {
            throw new RecordsFailure("The folder for " + file + " cannot be made.", failed);
        }
        try {
            HikariDataSource source = new HikariDataSource(embedded(file));
            Flyway.configure()
                    .dataSource(source)
                    .locations("classpath:tamabako/records/migrations")
                    .load()
                    .migrate();
            return new ClassBook(source);
        } catch (RuntimeException failed) {
            throw new RecordsFailure(
                    "The class book "
                            + file
                            + " cannot be opened. Is it a class book, and may it be written?",
                    failed);
        }
    }

    private static HikariConfig embedded(Path file) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + file);
        // One writer at a time is what the embedded database allows; a flush is a few milliseconds.
        config.setMaximumPoolSize(1);
        config.addDataSourceProperty("journal_mode", "WAL");
        config.addDataSourceProperty("synchronous", "FULL");
        config.addDataSourceProperty("busy_timeout", "5000");
        config.addDataSourceProperty("foreign_keys", "true");
        return config;
    }

    /// The templates in the book.
    public Templates templates() {
        return new Templates(book);
    }

    /// The teacher's own ladders in the book.
    public OwnLadders ladders() {
        return new OwnLadders(book);
    }

    /// The papers in the book.
    public PaperShelf papers() {
        return new PaperShelf(book);
    }

    /// All groups by name.
    public List<Group> groups() {
        return book.ask(handle ->
                handle.createQuery("select * from pupil_group order by name")
                        .map((row, _) -> Rows.group(row))
                        .list());
    }

    /// All pupils by name.
    public List<Pupil> pupils() {
        return book.ask(handle ->
                handle.createQuery("select * from pupil order by name")
                        .map((row, _) -> Rows.pupil(row))
                        .list());
    }

    /// The pupil of this identity, if there is one.
    public Optional<Pupil> findPupil(String id) {
        return book.ask(handle ->
                handle.createQuery("select * from pupil where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.pupil(row))
                        .findOne());
    }

    /// Puts a group with its pupils in the book, whole or not at all.
    public void keep(Group group, List<Pupil> pupils) {
        book.tell(handle -> {
            handle.createUpdate("insert into pupil_group values (?, ?, ?)")
                    .bind(0, group.id())
                    .bind(1, group.name())
                    .bind(2, group.demo())
                    .execute();
            for (Pupil pupil : pupils) {
                handle.createUpdate("insert into pupil values (?, ?, ?, ?, ?)")
                        .bind(0, pupil.id())
                        .bind(1, group.id())
                        .bind(2, pupil.name())
                        .bind(3, pupil.language().toLanguageTag())
                        .bind(4, pupil.demo())
                        .execute();
            }
        });
    }

    /// Puts a sheet in the book.
    public void keep(KeptSheet kept) {
        book.tell(handle ->
                handle.createUpdate("insert into sheet values (?, ?, ?, ?, ?)")
                        .bind(0, kept.sheet().id())
                        .bind(1, kept.sheet().title())
                        .bind(2, Rows.problems(kept.sheet()))
                        .bind(3, kept.keptAt().toString())
                        .bind(4, kept.demo())
                        .execute());
    }

    /// The sheet of this identity, if there is one.
    public Optional<KeptSheet> findSheet(String id) {
        return book.ask(handle ->
                handle.createQuery("select * from sheet where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.sheet(row))
                        .findOne());
    }

    /// The last `most` sheets, the newest first.
    public List<KeptSheet> latestSheets(int most) {
        return book.ask(handle ->
                handle.createQuery("select * from sheet order by kept_at desc, id limit :most")
                        .bind("most", most)
                        .map((row, _) -> Rows.sheet(row))
                        .list());
    }

    /// Puts work with all its answers in the book, whole or not at all.
    public void keep(Work work) {
        book.tell(handle -> {
            handle.createUpdate("insert into work values (?, ?, ?, ?)")
                    .bind(0, work.id())
                    .bind(1, work.sheetId())
                    .bind(2, work.pupilId())
                    .bind(3, work.handedAt().toString())
                    .execute();
            int position = 0;
            for (Work.MarkedAnswer answer : work.answers()) {
                handle.createUpdate("insert into work_answer values (?, ?, ?, ?)")
                        .bind(0, work.id())
                        .bind(1, ++position)
                        .bind(2, answer.written())
                        .bind(3, answer.mark())
                        .execute();
            }
        });
    }

    /// The last `most` pieces of work, the newest first.
    public List<Work> latestWork(int most) {
        return book.ask(handle ->
                handle
                        .createQuery("select * from work order by handed_at desc, id limit :most")
                        .bind("most", most)
                        .map((row, _) -> Rows.workWithoutAnswers(row))
                        .list()
                        .stream()
                        .map(work -> withAnswers(handle, work))
                        .toList());
    }

    /// The piece of work of this identity, if there is one.
    public Optional<Work> findWork(String id) {
        return book.ask(handle ->
                handle.createQuery("select * from work where id = :id")
                        .bind("id", id)
                        .map((row, _) -> Rows.workWithoutAnswers(row))
                        .findOne()
                        .map(work -> withAnswers(handle, work)));
    }

    private static Work withAnswers(Handle handle, Work work) {
        List<Work.MarkedAnswer> answers =
                handle.createQuery(
                                "select * from work_answer where work_id = :work order by position")
                        .bind("work", work.id())
                        .map((row, _) -> Rows.answer(row))
                        .list();
        return new Work(work.id(), work.sheetId(), work.pupilId(), work.handedAt(), answers);
    }

    /// Takes the demo class, its sheets and all its work out of the book.
    public void removeDemo() {
        book.tell(handle -> {
            handle.execute("delete from pupil_group where demo = 1");
            handle.execute("delete from sheet where demo = 1");
        });
    }

    @Override
    public void close() {
        source.close();
    }
}
