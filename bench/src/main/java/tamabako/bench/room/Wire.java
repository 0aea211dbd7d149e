package tamabako.bench.room;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;

/// One connection of the client. What it does is cheap, since client and server share the cores.
final class Wire {

    /// Stands in each event of a stream once.
    private static final byte[] EVENT = "\"phase\"".getBytes(StandardCharsets.US_ASCII);

    private final SocketChannel channel;
    private String text = "";

    /// How much of the mark of an event was seen so far.
    private int matched;

    final int seat;
    final boolean isStream;

    /// How many events came, with the greeting, and how many of them were looked at.
    int came;

    int seen;

    /// When the answer that is under way was sent; 0 for none.
    long asked;

    Wire(SocketChannel channel, int seat, boolean isStream) {
        this.channel = channel;
        this.seat = seat;
        this.isStream = isStream;
    }

    /// Reads what is there.
    ///
    /// @param buffer where the bytes may be put on the way
    /// @return whether the other end is still there
    boolean read(byte[] buffer) throws IOException {
        int count = channel.read(ByteBuffer.wrap(buffer));
        if (isStream) {
            count(buffer, count);
        } else if (count > 0) {
            String fresh = new String(buffer, 0, count, StandardCharsets.ISO_8859_1);
            text = text.isEmpty() ? fresh : text + fresh;
        }
        return count >= 0;
    }

    private void count(byte[] bytes, int length) {
        for (int i = 0; i < length; i++) {
            matched = bytes[i] == EVENT[matched] ? matched + 1 : bytes[i] == EVENT[0] ? 1 : 0;
            if (matched == EVENT.length) {
                matched = 0;
                came++;
            }
        }
    }

    void register(Selector selector) throws IOException {
        channel.register(selector, SelectionKey.OP_READ, this);
    }

    /// What came and was not taken yet; streams are only counted.
    String text() {
        return text;
    }

    /// Forgets what came.
    void forget() {
        text = "";
    }

    void send(String request) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(request.getBytes(StandardCharsets.US_ASCII));
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    static Wire of(SelectionKey key) {
        return (Wire) key.attachment();
    }
}
