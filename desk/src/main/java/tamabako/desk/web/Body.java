package tamabako.desk.web;

import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.xnio.channels.StreamSourceChannel;

/// What follows the headers of a request, read while it comes. The thread that waits for a slow
/// visitor should be a virtual one.
final class Body extends InputStream {

    /// A visitor may be silent for so long, in seconds.
    private static final long PATIENCE = 30;

    private final StreamSourceChannel channel;

    private Body(StreamSourceChannel channel) {
        this.channel = channel;
    }

    /// The body of that request, empty where it has none.
    static InputStream of(HttpServerExchange exchange) {
        StreamSourceChannel channel =
                exchange.isRequestComplete() ? null : exchange.getRequestChannel();
        return channel == null ? InputStream.nullInputStream() : new Body(channel);
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int from, int most) throws IOException {
        if (most == 0) {
            return 0;
        }
        ByteBuffer piece = ByteBuffer.wrap(into, from, most);
        int got = channel.read(piece);
        while (got == 0) {
            await();
            got = channel.read(piece);
        }
        return got;
    }

    private void await() throws IOException {
        CountDownLatch more = new CountDownLatch(1);
        channel.getReadSetter()
                .set(ready -> {
                    ready.suspendReads();
                    more.countDown();
                });
        channel.resumeReads();
        try {
            if (!more.await(PATIENCE, TimeUnit.SECONDS)) {
                throw new IOException("The visitor fell silent.");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("The desk is closing.");
        }
    }
}
