package tamabako.desk.room.journal;

import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.desk.book.PupilTraces;
import tamabako.desk.room.Doors;
import tamabako.desk.room.JoinCode;
import tamabako.desk.room.RoomCommand;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Setup;
import tamabako.records.ClassBook;
import tamabako.records.Database;
import tamabako.records.Identity;
import tamabako.records.RecordsFailure;
import tamabako.records.RoomLog;
import tamabako.records.RoomNotices;

/// The open rooms of a class book, shared with every other program over the same database.
///
/// Methods throw [tamabako.records.RecordsFailure] when the disk or the database fails; then
/// nothing of what was asked was kept.
public final class Rooms implements PupilTraces, AutoCloseable {

    /// A room that nobody closed is closed after so long.
    private static final Duration FORGOTTEN = Duration.ofHours(36);

    /// How often the clocks of the rounds are looked at, in milliseconds.
    private static final long LOOK = 200;

    /// How often the book is looked at for what a command beside the desk did, in milliseconds. A
    /// server tells of it; the embedded store tells nobody.
    private static final long GLANCE = 1_000;

    private static final Logger LOG = LoggerFactory.getLogger(Rooms.class);

    private final Map<String, OpenRoom> rooms = new ConcurrentHashMap<>();
    private final List<Consumer<Change>> watchers = new CopyOnWriteArrayList<>();
    private final ClassBook book;
    private final InstantSource clock;
    private final RoomJournal journal;
    private final AutoCloseable notices;
    private final ScheduledExecutorService timer =
            Executors.newSingleThreadScheduledExecutor(
                    Thread.ofPlatform().daemon().name("room-clock").factory());

    /// Goes on with the rooms that the book holds.
    public Rooms(ClassBook book, InstantSource clock) {
        this.book = book;
        this.clock = clock;
        this.journal = new RoomJournal(book);
        for (RoomLog.Entry entry : book.rooms().all()) {
            OpenRoom room = load(entry);
            if (entry.openedAt().plus(FORGOTTEN).isBefore(clock.instant())) {
                journal.take(Wish.of(room, new RoomCommand.Close(clock.millis())));
            }
        }
        this.notices = RoomNotices.listen(book.database(), this::hear);
        var _ = timer.scheduleWithFixedDelay(this::lookAtClocks, LOOK, LOOK, TimeUnit.MILLISECONDS);
        if (book.database() instanceof Database.Embedded) {
            var _ =
                    timer.scheduleWithFixedDelay(
                            this::glance, GLANCE, GLANCE, TimeUnit.MILLISECONDS);
        }
    }

    /// Opens a room under a fresh code.
    public RoomState open(Setup setup) {
        RoomLog.Entry entry =
                new RoomLog.Entry(
                        Identity.fresh(), freeCode(), SetupJson.write(setup), clock.instant());
        book.rooms().open(entry);
        return load(entry).state();
    }

    /// A code that no open room has.
    public String freeCode() {
        String code = JoinCode.fresh();
        while (book.rooms().findByCode(code).isPresent()) {
            code = JoinCode.fresh();
        }
        return code;
    }

    /// The open room of that identity.
    public Optional<RoomState> find(String id) {
        return findKept(id).filter(state -> !state.closed());
    }

    /// The room of that identity, if it is open, or closed and still kept.
    public Optional<RoomState> findKept(String id) {
        return room(id).map(OpenRoom::state)
                .filter(state -> !(state.doors() instanceof Doors.Gone));
    }

    /// The open room that is joined by that code.
    public Optional<RoomState> findByCode(String code) {
        Optional<RoomState> here =
                rooms.values().stream()
                        .map(OpenRoom::state)
                        .filter(state -> !state.closed() && state.code().equals(code))
                        .findFirst();
        return here.or(() ->
                book.rooms()
                        .findByCode(code)
                        .map(this::load)
                        .map(OpenRoom::state)
                        .filter(state -> !state.closed() && state.code().equals(code)));
    }

    /// Every open room, the newest first where they were opened by this program.
    public List<RoomState> all() {
        return kept().filter(room -> !room.closed()).toList();
    }

    /// Every closed room in which answers wait for the teacher.
    public List<RoomState> waiting() {
        return kept().filter(room -> room.closed() && room.waits()).toList();
    }

    private Stream<RoomState> kept() {
        return book.rooms().all().stream().map(entry -> load(entry).state());
    }

    /// Asks for something, and waits until what came of it is on the disk; empty where the room is
    /// not open.
    public Optional<Outcome> ask(String id, RoomCommand command) {
        return ask(id, List.of(command)).map(List::getFirst);
    }

    /// Asks for several things one after another.
    public Optional<List<Outcome>> ask(String id, List<RoomCommand> commands) {
        return room(id).map(room -> {
            List<Wish> wishes = commands.stream().map(command -> Wish.of(room, command)).toList();
            wishes.forEach(journal::take);
            List<Outcome> outcomes = new ArrayList<>();
            wishes.forEach(wish -> outcomes.add(await(wish)));
            return List.copyOf(outcomes);
        });
    }

    private static Outcome await(Wish wish) {
        try {
            return wish.outcome().join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RecordsFailure told) {
                throw told;
            }
            throw failed;
        }
    }

    /// Takes everything of a pupil out of the rooms: the name among those who are expected, the
    /// seat, and what it answered, also where it was written down before. The other programs over
    /// the same database do the same as soon as they hear of it.
    @Override
    public void erase(String pupilId) {
        kept().toList().forEach(room -> ask(room.id(), new RoomCommand.Forget(pupilId)));
    }

    /// Tells of every change from now on, in any room. The watcher is called by the journal and has
    /// to be quick.
    public void watch(Consumer<Change> watcher) {
        watchers.add(watcher);
    }

    private Optional<OpenRoom> room(String id) {
        return Optional.ofNullable(rooms.get(id)).or(() -> book.rooms().find(id).map(this::load));
    }

    private OpenRoom load(RoomLog.Entry entry) {
        return rooms.computeIfAbsent(
                entry.id(),
                id -> {
                    RoomState state =
                            RoomState.open(id, entry.code(), SetupJson.read(entry.setup()));
                    for (RoomLog.Part part : book.rooms().after(id, 0)) {
                        for (var event : EventLines.read(part.events())) {
                            state = state.apply(event);
                        }
                    }
                    OpenRoom room = new OpenRoom(state);
                    room.watch(this::changed);
                    return room;
                });
    }

    private void changed(Change change) {
        if (change.after().doors() instanceof Doors.Gone) {
            rooms.remove(change.after().id());
        }
        watchers.forEach(watcher -> watcher.accept(change));
    }

    /// Another program kept something.
    private void hear(String id) {
        if (id.equals(RoomNotices.ANY)) {
            rooms.values().forEach(room -> journal.take(Wish.news(room)));
        } else {
            Optional.ofNullable(rooms.get(id)).ifPresent(room -> journal.take(Wish.news(room)));
        }
    }

    /// Whether a command kept something beside this program.
    private void glance() {
        try {
            Map<String, Long> kept = rooms.isEmpty() ? Map.of() : book.rooms().lasts();
            for (OpenRoom room : rooms.values().stream().sorted(BY_NAME).toList()) {
                long known = room.state().events();
                if (kept.getOrDefault(room.state().id(), Long.MAX_VALUE) > known) {
                    journal.take(Wish.news(room));
                }
            }
        } catch (RecordsFailure failed) {
            LOG.warn("The rooms could not be compared with the class book.", failed);
        }
    }

    private void lookAtClocks() {
        long now = clock.millis();
        for (OpenRoom room : rooms.values().stream().sorted(BY_NAME).toList()) {
            OptionalLong end = room.state().ends();
            if (end.isPresent() && now >= end.getAsLong()) {
                journal.take(Wish.of(room, new RoomCommand.TimeUp(now)));
            }
            OptionalLong cleared = room.state().cleared();
            if (cleared.isPresent() && now >= cleared.getAsLong()) {
                journal.take(Wish.of(room, new RoomCommand.ClearAway(now)));
            }
        }
    }

    private static final Comparator<OpenRoom> BY_NAME =
            Comparator.comparing(room -> room.state().id());

    @Override
    public void close() {
        timer.shutdownNow();
        try {
            notices.close();
        } catch (Exception failed) {
            // It only listened.
        }
        journal.close();
    }
}
