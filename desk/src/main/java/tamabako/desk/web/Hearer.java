package tamabako.desk.web;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.protocol.http.HttpServerConnection;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;
import org.xnio.IoUtils;
import org.xnio.channels.StreamSinkChannel;
import org.xnio.channels.StreamSourceChannel;

/// A connection that hears what comes by and by. It has no thread and, unless the visitor is slow,
/// no buffer: in its turn on the I/O thread it writes what there is to tell.
final class Hearer implements Outlet {

    private final HttpServerConnection connection;
    private final HttpServerExchange exchange;
    private final Lane lane;
    private final AtomicBoolean woken = new AtomicBoolean();
    private final AtomicBoolean left = new AtomicBoolean();
    private volatile @Nullable Telling telling;

    // The I/O thread alone knows the following.
    private @Nullable StreamSinkChannel channel;
    private @Nullable ByteBuffer rest;
    private boolean isFull;
    private boolean isDone;

    /// @param exchange with its status and headers set, and nothing sent
    Hearer(HttpServerExchange exchange, Lane lane) {
        this.exchange = exchange;
        this.connection = (HttpServerConnection) exchange.getConnection();
        this.lane = lane;
    }

    @Override
    public void tell(Telling told) {
        telling = told;
        connection.addCloseListener(_ -> leave(told));
        if (!connection.isOpen()) {
            leave(told);
        }
        lane.run(this::begin);
    }

    private void leave(Telling told) {
        if (left.compareAndSet(false, true)) {
            told.gone();
        }
    }

    @Override
    public void wake() {
        if (!woken.getAndSet(true)) {
            lane.wake(this);
        }
    }

    @Override
    public void cut() {
        lane.run(this::close);
    }

    private void begin() {
        StreamSinkChannel out = exchange.getResponseChannel();
        if (out == null) {
            close();
            return;
        }
        out.getWriteSetter().set(_ -> goOn());
        channel = out;
        // Nobody speaks on this connection any more; but it tells when the visitor is gone.
        var in = connection.getChannel().getSourceChannel();
        in.setReadListener(this::listen);
        in.resumeReads();
        turn();
    }

    private void listen(StreamSourceChannel in) {
        ByteBuffer ignored = ByteBuffer.allocate(256);
        try {
            int count = in.read(ignored);
            while (count > 0) {
                ignored.clear();
                count = in.read(ignored);
            }
            if (count < 0) {
                close();
            }
        } catch (IOException gone) {
            close();
        }
    }

    /// Writes what is new; to be called by the lane's thread.
    void turn() {
        woken.set(false);
        if (!isFull) {
            write();
        }
    }

    private void goOn() {
        isFull = false;
        write();
    }

    private void write() {
        StreamSinkChannel out = channel;
        Telling told = telling;
        if (out == null || told == null || isDone) {
            return;
        }
        try {
            boolean isOver = told.isOver();
            if (writeAll(out, told)) {
                if (out.isWriteResumed()) {
                    out.suspendWrites();
                }
                if (isOver) {
                    isDone = true;
                    leave(told);
                    exchange.endExchange();
                }
            } else {
                isFull = true;
                out.resumeWrites();
            }
        } catch (IOException gone) {
            close();
        }
    }

    /// Whether the visitor took all there was.
    private boolean writeAll(StreamSinkChannel out, Telling told) throws IOException {
        ByteBuffer piece = rest;
        while (true) {
            if (piece == null) {
                Optional<byte[]> next = told.next();
                if (next.isEmpty()) {
                    return true;
                }
                piece = ByteBuffer.wrap(next.get());
            }
            while (piece.hasRemaining()) {
                if (out.write(piece) == 0) {
                    rest = piece;
                    return false;
                }
            }
            piece = null;
            rest = null;
        }
    }

    private void close() {
        isDone = true;
        IoUtils.safeClose(connection);
    }
}
