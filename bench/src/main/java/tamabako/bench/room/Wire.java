package tamabako.bench.room;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;

/// One connection of the client: how much of a mark in the answer was seen so far.
final class Wire {

    private final SocketChannel channel;
    private final byte[] mark;
    private final StringBuilder text = new StringBuilder();
    private final boolean keepsText;
    private int matched;
    final int seat;
    boolean isStream;
    int seen;
    long asked;

    /// @param mark each time that these bytes come, something is complete
    /// @param keepsText whether what comes is to be read
    Wire(SocketChannel channel, int seat, String mark, boolean keepsText) {
        this.channel = channel;
        this.seat = seat;
        this.mark = mark.getBytes(StandardCharsets.US_ASCII);
        this.keepsText = keepsText;
    }

    /// Reads what is there; how often the mark was in it, or -1 at the end.
    int read(ByteBuffer buffer) throws IOException {
        buffer.clear();
        int count = channel.read(buffer);
        if (count < 0) {
            return -1;
        }
        int found = 0;
        for (int i = 0; i < count; i++) {
            byte one = buffer.get(i);
            if (keepsText) {
                text.append((char) one);
            }
            matched = one == mark[matched] ? matched + 1 : one == mark[0] ? 1 : 0;
            if (matched == mark.length) {
                matched = 0;
                found++;
            }
        }
        return found;
    }

    void register(Selector selector) throws IOException {
        channel.register(selector, SelectionKey.OP_READ, this);
    }

    /// What came since [#text] was asked last.
    String textSoFar() {
        return text.toString();
    }

    /// What came since this was asked last; it is forgotten.
    String text() {
        String all = text.toString();
        text.setLength(0);
        return all;
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
