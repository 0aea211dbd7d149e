package tamabako.desk.room.live;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/// Messages that all listeners of one audience get, in one order.
public final class Broadcast {

    /// A line that says nothing goes out so often, so that both ends notice a dead connection.
    private static final long BEAT = TimeUnit.SECONDS.toNanos(20);

    /// A listener so many messages behind is let go; its page asks for the state and comes again.
    private static final long FARTHEST = 1_000;

    private final Set<Listener> listeners = ConcurrentHashMap.newKeySet();
    private volatile Link last = new Link(0, SseText.BEAT);

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
        listeners.forEach(Listener::wake);
    }

    /// Somebody who listens from now on.
    public Listener join() {
        Listener listener = new Listener();
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
    public final class Listener implements AutoCloseable {

        private Link at = last;
        private volatile @Nullable Thread thread;
        private volatile boolean poked;
        private volatile boolean replaced;
        private volatile boolean closed;

        /// Tells this listener alone that its page has to ask for the state.
        public void poke() {
            poked = true;
            wake();
        }

        /// Tells this listener that another one took its place, and lets it go.
        public void replace() {
            replaced = true;
            close();
        }

        private void wake() {
            Thread waiting = thread;
            if (waiting != null) {
                LockSupport.unpark(waiting);
            }
        }

        /// Sends what is told until the other end goes or [#close] is called; blocks the thread,
        /// which should be a virtual one.
        ///
        /// @param first is made now and sent before anything else
        /// @throws IOException if the other end is gone
        public void send(Supplier<byte[]> first, OutputStream out) throws IOException {
            thread = Thread.currentThread();
            out.write(first.get());
            out.flush();
            long beat = System.nanoTime() + BEAT;
            boolean last = false;
            while (!last) {
                last = closed;
                boolean sent = sendNews(out);
                long now = System.nanoTime();
                if (!sent && now >= beat) {
                    out.write(SseText.BEAT);
                    sent = true;
                }
                if (sent) {
                    out.flush();
                    beat = now + BEAT;
                } else if (!last) {
                    LockSupport.parkNanos(beat - now);
                }
            }
        }

        private boolean sendNews(OutputStream out) throws IOException {
            boolean sent = replaced;
            if (replaced) {
                out.write(SseText.REPLACED);
            }
            if (poked) {
                poked = false;
                out.write(SseText.LOOK);
                sent = true;
            }
            for (Link next = at.next; next != null; next = next.next) {
                out.write(next.bytes);
                at = next;
                sent = true;
            }
            if (last.number - at.number > FARTHEST) {
                close();
            }
            return sent;
        }

        @Override
        public void close() {
            closed = true;
            listeners.remove(this);
            wake();
        }
    }
}
