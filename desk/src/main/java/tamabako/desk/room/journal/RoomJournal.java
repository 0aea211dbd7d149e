package tamabako.desk.room.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tamabako.records.ClassBook;

/// Keeps what happens in the rooms: everything that was wished within [#PACE] is decided and kept
/// in one transaction, and told after it is on the disk.
final class RoomJournal implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(RoomJournal.class);

    /// The least time from one commit to the next, in nanoseconds. The flush of a disk takes some
    /// milliseconds anyway; so a big class shares it.
    private static final long PACE = TimeUnit.MILLISECONDS.toNanos(10);

    /// The most wishes that one transaction takes.
    private static final int MOST = 5_000;

    private final BlockingQueue<Wish> waiting = new LinkedBlockingQueue<>();
    private final ClassBook book;
    private final KeptWork work;
    private final Thread writer;
    private volatile boolean closed;

    RoomJournal(ClassBook book) {
        this.book = book;
        this.work = new KeptWork(book);
        this.writer = Thread.ofPlatform().name("room-journal").daemon().start(this::run);
    }

    /// Asks for something; the outcome of the wish is told when it is kept.
    void take(Wish wish) {
        waiting.add(wish);
    }

    private void run() {
        long next = System.nanoTime();
        List<Wish> together = new ArrayList<>();
        try {
            while (!closed || !waiting.isEmpty()) {
                Wish first = waiting.poll(100, TimeUnit.MILLISECONDS);
                if (first == null) {
                    continue;
                }
                TimeUnit.NANOSECONDS.sleep(next - System.nanoTime());
                next = System.nanoTime() + PACE;
                together.add(first);
                waiting.drainTo(together, MOST);
                commit(together);
                together.clear();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    // Whatever breaks, those who wished are told that nothing was kept, and the journal goes on.
    @SuppressWarnings("CatchingUnchecked")
    private void commit(List<Wish> together) {
        List<Deciding> rooms = new ArrayList<>();
        try {
            book.whole(() -> {
                byRoom(together)
                        .values()
                        .forEach(wishes -> {
                            Deciding deciding = new Deciding(wishes.getFirst().room(), wishes);
                            deciding.keep(book.rooms(), work);
                            rooms.add(deciding);
                        });
            });
        } catch (RuntimeException failed) {
            LOG.error("{} wishes could not be kept.", together.size(), failed);
            together.forEach(wish -> wish.outcome().completeExceptionally(failed));
            return;
        }
        rooms.forEach(Deciding::show);
    }

    /// Rooms are locked in the order of their names, so that two programs never wait for each
    /// other.
    private static SortedMap<String, List<Wish>> byRoom(List<Wish> together) {
        SortedMap<String, List<Wish>> rooms = new TreeMap<>();
        for (Wish wish : together) {
            rooms.computeIfAbsent(wish.room().state().id(), _ -> new ArrayList<>()).add(wish);
        }
        return rooms;
    }

    /// Keeps what was wished so far and stops.
    @Override
    public void close() {
        closed = true;
        try {
            writer.join(TimeUnit.SECONDS.toMillis(5));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
