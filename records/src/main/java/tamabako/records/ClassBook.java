package tamabako.records;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.util.List;
import org.jdbi.v3.core.Jdbi;

/// The class book, open for reading and writing by any number of threads. What it holds is reached
/// by one noun at a time: `book.pupils().all()`, `book.sheets().latest(8)`.
///
/// Methods throw [RecordsFailure] when the disk or the database fails.
public final class ClassBook implements AutoCloseable {

    /// Tables whose rows say by themselves that they belong to the demo class.
    private static final List<String> WITH_DEMO = List.of("pupil_group", "sheet", "teacher");

    private final Database database;
    private final HikariDataSource source;
    private final boolean isNew;
    private final Door door;

    private ClassBook(Database database, Opening.Opened opened) {
        this.database = database;
        this.source = opened.source();
        this.isNew = opened.isNew();
        this.door = new Door(Jdbi.create(source), database);
    }

    /// Opens the class book in `database`, whose tables are made or brought up to date.
    public static ClassBook open(Database database) {
        return new ClassBook(database, Opening.open(database));
    }

    /// Opens a class book in `file` whose tables are as they were after the migration `version`, to
    /// take in what was kept then.
    public static ClassBook openAsOf(int version, Path file) {
        Database database = new Database.Embedded(file);
        return new ClassBook(database, Opening.open(database, Integer.toString(version)));
    }

    /// Opens the class book in `file`, which is made if it is not there.
    public static ClassBook open(Path file) {
        return open(new Database.Embedded(file));
    }

    /// Where it is kept.
    public Database database() {
        return database;
    }

    /// Whether it was begun just now, when it was opened.
    public boolean isNew() {
        return isNew;
    }

    /// The groups.
    public Groups groups() {
        return new Groups(door);
    }

    /// The pupils.
    public Pupils pupils() {
        return new Pupils(door);
    }

    /// Teachers and assistants.
    public Teachers teachers() {
        return new Teachers(door);
    }

    /// The accounts of teachers and assistants.
    public Accounts accounts() {
        return new Accounts(door);
    }

    /// Who is signed in.
    public SignIns signIns() {
        return new SignIns(door);
    }

    /// The sheets.
    public Sheets sheets() {
        return new Sheets(door);
    }

    /// The teacher's templates.
    public Templates templates() {
        return new Templates(door);
    }

    /// The teacher's own ladders.
    public OwnLadders ladders() {
        return new OwnLadders(door);
    }

    /// The papers.
    public PaperShelf papers() {
        return new PaperShelf(door);
    }

    /// Which sheets were handed out to whom.
    public Handouts handouts() {
        return new Handouts(door);
    }

    /// The work that was handed in.
    public WorkDone work() {
        return new WorkDone(door);
    }

    /// Answers that were typed and are not handed in yet.
    public Drafts drafts() {
        return new Drafts(door);
    }

    /// Who came when.
    public Attendance attendance() {
        return new Attendance(door);
    }

    /// The teacher's notes.
    public Notes notes() {
        return new Notes(door);
    }

    /// Results of exams and contests.
    public Results results() {
        return new Results(door);
    }

    /// What came of exams that were sat elsewhere.
    public ExamOutcomes exams() {
        return new ExamOutcomes(door);
    }

    /// The rooms that are open.
    public RoomLog rooms() {
        return new RoomLog(door, database);
    }

    /// The figures that pupils sit down with.
    public Pins pins() {
        return new Pins(door);
    }

    /// How the class book is to be kept.
    public Settings settings() {
        return new Settings(door);
    }

    /// All of it as tables and rows, for those who copy the whole book.
    public Tables tables() {
        return new Tables(door, database);
    }

    /// Makes several changes in one transaction, whole or not at all.
    public void whole(Runnable changes) {
        door.whole(changes);
    }

    /// Whether anything of the demo class is in the book.
    public boolean hasDemo() {
        return groups().all().stream().anyMatch(Group::demo);
    }

    /// Takes the demo class, its sheets and all its work out of the book.
    public void removeDemo() {
        door.tell(book ->
                WITH_DEMO.forEach(
                        table -> book.execute("delete from " + table + " where demo = 1")));
    }

    /// The door to its tables, for the parts of this module that work on all of them.
    Door door() {
        return door;
    }

    @Override
    public void close() {
        source.close();
    }
}
