package tamabako.desk.room.live;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tamabako.desk.web.Outlet;
import tamabako.desk.web.Telling;

/// Messages that all listeners of one audience get, in one order.
public final class Broadcast {

    /// Where nothing was said for so long, a line that says nothing goes out, so that both ends
    /// notice a dead connection.
    private static final long QUIET = TimeUnit.SECONDS.toNanos(20);

    /// A listener so many messages behind is let go; its page asks for the state and comes again.
    private static final long FARTHEST = 1_000;

    private final Set<Listener> listeners = ConcurrentHashMap.newKeySet();
    private volatile Link last = new Link(0, SseText.BEAT);
    private volatile long lastSaid = System.nanoTime();

    /// A message in the chain. Whoever stands on it has sent it.
    private static final class Link {
        private final long number;
        private final byte[] bytes;
        private volatile @Nullable Link next;

        private Link(long number, byte[] bytes) {
            this.number = number;
            this.bytes = bytes;
        }
    }

    /// Tells a message to all. The bytes are shared and must not change.
    public synchronized void say(byte[] bytes) {
        Link link = new Link(last.number + 1, bytes);
        last.next = link;
        last = link;
        lastSaid = System.nanoTime();
        for (Listener listener : listeners) {
            listener.hear(link.number);
        }
    }

    /// Says the line that says nothing, if nothing else was said for a while.
    public void beat() {
        if (System.nanoTime() - lastSaid >= QUIET) {
            say(SseText.BEAT);
        }
    }

    /// Somebody who listens from now on.
    ///
    /// @param leaving is told when the listener goes, once
    public Listener join(Outlet out, Consumer<Listener> leaving) {
        Listener listener = new Listener(out, leaving);
        listeners.add(listener);
        return listener;
    }

    /// How many listen.
    public int count() {
        return listeners.size();
    }

    /// Lets everybody go.
    public void close() {
        listeners.forEach(Listener::close);
    }

    /// One connection that listens.
    public final class Listener implements Telling, AutoCloseable {

        private final Outlet out;
        private final Consumer<Listener> leaving;
        private volatile Link at = last;
        private volatile byte @Nullable [] first;
        private volatile boolean poked;
        private volatile boolean replaced;
        private volatile boolean closed;

        private Listener(Outlet out, Consumer<Listener> leaving) {
            this.out = out;
            this.leaving = leaving;
        }

        /// Begins to tell.
        ///
        /// @param greeting comes before anything else, and has to be newer than the listener
        public void begin(byte[] greeting) {
            first = greeting;
            out.tell(this);
        }

        /// Tells this listener alone that its page has to ask for the state.
        public void poke() {
            poked = true;
            out.wake();
        }

        /// Tells this listener that another one took its place, and lets it go.
        public void replace() {
            replaced = true;
            close();
        }

        private void hear(long number) {
            if (number - at.number > FARTHEST) {
                out.cut();
            } else {
                out.wake();
            }
        }

        @Override
        public Optional<byte[]> next() {
            byte[] greeting = first;
            if (greeting != null) {
                first = null;
                return Optional.of(greeting);
            }
            if (replaced) {
                replaced = false;
                return Optional.of(SseText.REPLACED);
            }
            if (poked) {
                poked = false;
                return Optional.of(SseText.LOOK);
            }
            Link next = at.next;
            if (next == null) {
                return Optional.empty();
            }
            at = next;
            return Optional.of(next.bytes);
        }

        @Override
        public boolean isOver() {
            return closed;
        }

        @Override
        public void gone() {
            listeners.remove(this);
            leaving.accept(this);
        }

        /// Lets it go when it has heard what was said so far.
        @Override
        public void close() {
            closed = true;
            out.wake();
        }
    }
}
