package tamabako.desk.account;

import java.net.InetAddress;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import tamabako.desk.account.AccountDoor.Reach;
import tamabako.desk.web.Access;
import tamabako.desk.web.DeskServer;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.records.Account;
import tamabako.records.ClassBook;
import tamabako.records.Teacher;

/// A desk with accounts, three plain pages and a clock that goes on when it is told to.
final class GuardedDesk implements AutoCloseable {

    static final String PASSWORD = "harbour kingfisher ladder";
    static final Teacher MORI = new Teacher("MORI", "Mori", Teacher.Role.OWNER, false);
    static final Teacher SATO = new Teacher("SATO", "Sato", Teacher.Role.TEACHER, false);
    static final Teacher KUDO = new Teacher("KUDO", "Kudo", Teacher.Role.ASSISTANT, false);

    final ChangingClock clock = new ChangingClock();
    final ClassBook book;
    final AccountDoor door;
    private final DeskServer server;

    GuardedDesk(Path folder, Reach reach, boolean withoutPasswords) {
        book = ClassBook.open(folder.resolve("book.sqlite"));
        door = new AccountDoor(book, reach, withoutPasswords, clock);
        server =
                DeskServer.start(
                        InetAddress.getLoopbackAddress(),
                        0,
                        List.of(
                                new AccountPages(book, door, clock, ZoneId.of("UTC")),
                                () ->
                                        List.of(
                                                page("/").forWhom(Access.ASSISTANT),
                                                page("/pupils"),
                                                page("/seat").forWhom(Access.PUPIL),
                                                Route.post("/erase", GuardedDesk::told))),
                        door);
    }

    /// A desk on this computer that has an owner, a teacher and an assistant, all with one
    /// password.
    static GuardedDesk withThree(Path folder) {
        GuardedDesk desk = new GuardedDesk(folder, Reach.THIS_COMPUTER, false);
        String hash = desk.door.passwords().hash(PASSWORD);
        for (Teacher teacher : List.of(MORI, SATO, KUDO)) {
            desk.book.teachers().keep(teacher);
            desk.book.accounts().keep(Account.withPassword(teacher, hash));
        }
        return desk;
    }

    private static Route page(String address) {
        return Route.get(address, GuardedDesk::told);
    }

    private static Reply told(Request request) {
        return Reply.json("here is " + request.who());
    }

    /// A browser that was never here.
    Visit visit() {
        return new Visit(server.url());
    }

    /// A browser at which someone signed in.
    Visit visit(Teacher teacher) {
        Visit visit = visit();
        visit.post("/sign-in", "name", teacher.name(), "password", PASSWORD);
        if (visit.cookie("sign-in").isEmpty()) {
            throw new AssertionError(teacher.name() + " could not sign in.");
        }
        return visit;
    }

    @Override
    public void close() {
        server.close();
        book.close();
    }
}
