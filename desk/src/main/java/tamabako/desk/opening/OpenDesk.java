package tamabako.desk.opening;

import java.net.InetAddress;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import tamabako.desk.account.AccountDoor;
import tamabako.desk.account.AccountDoor.Reach;
import tamabako.desk.account.AccountPages;
import tamabako.desk.book.BookPages;
import tamabako.desk.call.CallPages;
import tamabako.desk.entry.EntryPages;
import tamabako.desk.exam.ExamPages;
import tamabako.desk.home.HomePage;
import tamabako.desk.keeping.KeepingPages;
import tamabako.desk.ladder.LadderPages;
import tamabako.desk.mark.MarkPages;
import tamabako.desk.paper.PaperPages;
import tamabako.desk.progress.ProgressPages;
import tamabako.desk.roster.RosterPages;
import tamabako.desk.sheet.SheetPages;
import tamabako.desk.sheet.TemplatePages;
import tamabako.desk.showing.ShowingPages;
import tamabako.desk.web.DeskServer;
import tamabako.desk.web.Encryption;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.work.WorkPages;
import tamabako.records.ClassBook;
import tamabako.records.Database;
import tamabako.records.demo.DemoClass;

/// A desk that is open: its class book, and its server.
public final class OpenDesk implements AutoCloseable {

    private static final String BOOK = "classbook.sqlite";

    private final ClassBook book;
    private final OpenRooms rooms;
    private final DeskServer server;
    private final AccountDoor door;

    private OpenDesk(ClassBook book, OpenRooms rooms, DeskServer server, AccountDoor door) {
        this.book = book;
        this.rooms = rooms;
        this.server = server;
        this.door = door;
    }

    /// Opens a desk without passwords over the book in `folder`, for whoever sits at this computer.
    ///
    /// @throws IllegalArgumentException if others could reach that address
    /// @see #guarded
    public static OpenDesk open(Path folder, boolean demo, InetAddress address, int port) {
        return open(inFolder(folder), demo, address, port);
    }

    /// Opens a desk without passwords over the book in `database`.
    ///
    /// @throws IllegalArgumentException if others could reach that address
    public static OpenDesk open(Database database, boolean demo, InetAddress address, int port) {
        return open(database, demo, new Place(address, port, Optional.empty()), true);
    }

    /// Opens the book in `folder` and starts the server.
    ///
    /// @see #guarded(Database, boolean, InetAddress, int)
    public static OpenDesk guarded(Path folder, boolean demo, InetAddress address, int port) {
        return guarded(inFolder(folder), demo, address, port);
    }

    /// Opens the book in `database` and starts the server. A new book begins with the demo class.
    /// The first page asks how the desk is to be kept.
    ///
    /// @param demo whether an old book gets the demo class too, if it does not have it
    /// @param address where the server listens
    /// @param port the port, 0 for any free one
    /// @throws tamabako.records.RecordsFailure if the book cannot be opened
    public static OpenDesk guarded(Database database, boolean demo, InetAddress address, int port) {
        return guarded(database, demo, new Place(address, port, Optional.empty()));
    }

    /// Where a desk is reached.
    ///
    /// @param address where the server listens
    /// @param port the port, 0 for any free one
    /// @param encryption what it is reached by HTTPS with; empty for plain HTTP
    public record Place(InetAddress address, int port, Optional<Encryption> encryption) {}

    /// Opens the book in `database` and starts the server at that place.
    ///
    /// @see #guarded(Database, boolean, InetAddress, int)
    public static OpenDesk guarded(Database database, boolean demo, Place place) {
        return open(database, demo, place, false);
    }

    /// Opens the book in `database` and starts the server at that place, without passwords.
    ///
    /// @throws IllegalArgumentException if others could reach that address
    public static OpenDesk open(Database database, boolean demo, Place place) {
        return open(database, demo, place, true);
    }

    private static Database inFolder(Path folder) {
        PrivateFolder.make(folder);
        return new Database.Embedded(bookIn(folder));
    }

    private static OpenDesk open(
            Database database, boolean demo, Place place, boolean withoutPasswords) {
        ClassBook book = ClassBook.open(database);
        try {
            if (book.isNew() || (demo && !book.hasDemo())) {
                DemoClass.fill(book, Instant.now());
            }
            Reach reach = place.address().isLoopbackAddress() ? Reach.THIS_COMPUTER : Reach.NETWORK;
            Clock clock = Clock.systemUTC();
            AccountDoor door = new AccountDoor(book, reach, withoutPasswords, clock);
            OpenRooms rooms = new OpenRooms(book);
            DeskServer server =
                    DeskServer.start(
                            place.address(),
                            place.port(),
                            pages(book, door, rooms),
                            door,
                            place.encryption());
            return new OpenDesk(book, rooms, server, door);
        } catch (RuntimeException failed) {
            book.close();
            throw failed;
        }
    }

    /// The file of the class book that is kept in `folder`.
    public static Path bookIn(Path folder) {
        return folder.resolve(BOOK);
    }

    private static List<Routes> pages(ClassBook book, AccountDoor door, OpenRooms rooms) {
        ZoneId zone = ZoneId.systemDefault();
        Clock clock = Clock.systemUTC();
        SecureRandom chance = new SecureRandom();
        ProgressPages progress = new ProgressPages(book, clock, zone, chance::nextLong);
        return List.of(
                new HomePage(book, zone),
                new BookPages(book, clock, zone, List.of(rooms.traces(), progress)),
                progress,
                new ExamPages(book, clock, zone),
                new EntryPages(book, clock, zone),
                new AccountPages(book, door, clock, zone),
                new SheetPages(book, clock, chance::nextLong, zone),
                new TemplatePages(book.templates(), clock),
                new PaperPages(book, clock, chance::nextLong, zone),
                new LadderPages(book.ladders(), clock),
                new MarkPages(book, clock, zone),
                new CallPages(book, chance::nextLong),
                new ShowingPages(book, chance::nextLong),
                rooms.pages(),
                new WorkPages(),
                new RosterPages(book, clock, zone),
                new KeepingPages(book, clock, zone));
    }

    /// The address to type into a browser on this computer.
    public String url() {
        return server.url();
    }

    /// Where the class book is kept.
    public Database database() {
        return book.database();
    }

    /// Every address that it answers at.
    List<Route> routes() {
        return server.routes();
    }

    /// What has to be typed to become the owner, where others can reach the desk and it has none.
    public Optional<String> setupCode() {
        return door.setupCode();
    }

    /// The book itself.
    public ClassBook book() {
        return book;
    }

    @Override
    public void close() {
        rooms.letGo();
        server.close();
        rooms.close();
        book.close();
    }
}
