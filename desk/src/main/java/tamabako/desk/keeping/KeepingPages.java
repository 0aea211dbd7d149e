package tamabako.desk.keeping;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Access;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.desk.web.Upload;
import tamabako.desk.web.Words;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Reason;
import tamabako.records.RecordsFailure;
import tamabako.records.RecordsWords;
import tamabako.records.WholeBook;
import tamabako.records.keeping.Backup;
import tamabako.records.keeping.Passphrase;

/// The page 'Keeping the book', and its backups.
public final class KeepingPages implements Routes {

    /// Longer backups are restored by the command.
    private static final int MEGABYTES = 64;

    private final ClassBook book;
    private final InstantSource clock;
    private final ZoneId zone;

    /// @param clock tells when a backup is made
    /// @param zone where
    public KeepingPages(ClassBook book, InstantSource clock, ZoneId zone) {
        this.book = book;
        this.clock = clock;
        this.zone = zone;
    }

    @Override
    public List<Route> routes() {
        return List.of(
                Route.get("/book/keeping", this::show),
                Route.post("/book/keeping/backup", this::backUp).forWhom(Access.OWNER),
                Route.upload("/book/keeping/restore", MEGABYTES, this::restore)
                        .forWhom(Access.OWNER));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("keeping");
    }

    private Reply show(Request request) {
        boolean noRoster = request.query().text("fault").equals("no-roster");
        return page(
                noRoster ? 400 : 200,
                request,
                done(request.query(), request.words()),
                new Faults(
                        noRoster
                                ? Optional.of(request.words().say("keeping.no-file"))
                                : Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    /// What stands against each of the three.
    private record Faults(
            Optional<String> roster, Optional<String> backup, Optional<String> restore) {

        static Faults ofBackup(String fault) {
            return new Faults(Optional.empty(), Optional.of(fault), Optional.empty());
        }

        static Faults ofRestore(String fault) {
            return new Faults(Optional.empty(), Optional.empty(), Optional.of(fault));
        }
    }

    private Reply page(int status, Request request, Optional<String> done, Faults faults) {
        KeepingView view =
                new KeepingView(
                        book.groups().all().stream()
                                .filter(group -> !group.demo())
                                .map(Group::name)
                                .toList(),
                        done,
                        faults.roster(),
                        faults.backup(),
                        faults.restore(),
                        request.who().may(Access.OWNER));
        return new Reply.Page(status, "keeping/keeping.jte", Map.of("keeping", view));
    }

    private static Optional<String> done(Fields query, Words words) {
        return switch (query.text("done")) {
            case "roster" ->
                    Optional.of(
                            words.say(
                                    "keeping.roster-done",
                                    figure(query, "added"),
                                    figure(query, "changed"),
                                    figure(query, "moved"),
                                    figure(query, "same"),
                                    figure(query, "wrong")));
            case "restore" -> Optional.of(words.say("keeping.restore-done", figure(query, "rows")));
            default -> Optional.empty();
        };
    }

    /// A figure that the desk put into its own address.
    private static String figure(Fields query, String name) {
        String written = query.text(name);
        return written.matches("\\d{1,9}") ? written : "0";
    }

    private Reply backUp(Request request) {
        Fields form = request.form();
        boolean plain = form.has("plain");
        String first = form.find("passphrase").orElse("");
        if (!plain && !first.equals(form.find("again").orElse(""))) {
            return page(
                    400,
                    request,
                    Optional.empty(),
                    Faults.ofBackup(request.words().say("keeping.not-twice")));
        }
        try {
            Optional<Passphrase> passphrase =
                    plain ? Optional.empty() : Optional.of(Passphrase.choose(first));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Backup.write(book, passphrase, clock.instant(), WholeBook.NOBODY, out);
            String name = "class-book-" + LocalDate.ofInstant(clock.instant(), zone) + ".backup";
            return new Reply.Bytes(
                    200,
                    "application/octet-stream",
                    Map.of("Content-Disposition", "attachment; filename=\"" + name + "\""),
                    out.toByteArray());
        } catch (RecordsFailure failed) {
            return page(400, request, Optional.empty(), Faults.ofBackup(mendable(failed, request)));
        } catch (IOException impossible) {
            throw new UncheckedIOException("Cannot write to memory.", impossible);
        }
    }

    private Reply restore(Request request) {
        Optional<Upload> file = request.form().file("file");
        if (file.isEmpty()) {
            return page(
                    400,
                    request,
                    Optional.empty(),
                    Faults.ofRestore(request.words().say("keeping.no-file")));
        }
        try {
            Map<String, Long> counts =
                    Backup.read(file.get().name(), file.get().bytes())
                            .restore(
                                    Passphrase.typed(request.form().find("passphrase").orElse("")),
                                    book,
                                    request.form().has("replace"),
                                    WholeBook.NOBODY);
            long rows = counts.values().stream().mapToLong(Long::longValue).sum();
            return Reply.seeOther("/book/keeping?done=restore&rows=" + rows);
        } catch (RecordsFailure failed) {
            return page(
                    400, request, Optional.empty(), Faults.ofRestore(mendable(failed, request)));
        }
    }

    /// What a reader can mend on this page; anything else is the desk's trouble.
    private static String mendable(RecordsFailure failed, Request request) {
        return switch (failed.reason()) {
            case Reason.NotEmpty(_, long rows) -> request.words().say("keeping.not-empty", rows);
            case Reason.NoBackup _,
                    Reason.DamagedBackup _,
                    Reason.NewerBackup _,
                    Reason.NeedsPassphrase _,
                    Reason.ShortPassphrase _,
                    Reason.WrongPassphrase _,
                    Reason.NotTheSame _ ->
                    RecordsWords.of(request.words().language()).say(failed.reason());
            case Reason.NoFolder _,
                    Reason.NotOpened _,
                    Reason.TooNew _,
                    Reason.NoServer _,
                    Reason.NotLetIn _,
                    Reason.NoUnicode _,
                    Reason.NoPassword _,
                    Reason.PasswordInAddress _,
                    Reason.NoSuchDatabase _,
                    Reason.PapersNotRead _,
                    Reason.NotRead _,
                    Reason.NotWritten _,
                    Reason.SameBook _,
                    Reason.NoBook _ ->
                    throw failed;
        };
    }
}
