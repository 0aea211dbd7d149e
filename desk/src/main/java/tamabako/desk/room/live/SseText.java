package tamabako.desk.room.live;

import java.nio.charset.StandardCharsets;
import java.util.OptionalLong;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Turn;

/// Messages as the event stream format of HTML writes them.
final class SseText {

    /// A comment, which no page sees.
    static final byte[] BEAT = bytes(":\n\n");

    /// Something changed that the page has to ask for.
    static final byte[] LOOK = bytes("event: look\ndata: 1\n\n");

    /// The same seat is open somewhere else now.
    static final byte[] REPLACED = bytes("event: replaced\ndata: 1\n\n");

    /// The room is gone.
    static final byte[] CLOSED =
            bytes(
                    "event: round\ndata: {\"run\":0,\"phase\":\"closed\",\"worked\":0,\"limit\":-1}\n\n");

    private SseText() {}

    /// Where the round stands, as every seat may know it; times in milliseconds. Who has extra time
    /// works out the own limit.
    static byte[] round(RoomState room, long now) {
        return bytes("event: round\ndata: " + roundJson(room, now) + "\n\n");
    }

    static String roundJson(RoomState room, long now) {
        OptionalLong limit = room.limit();
        return "{\"run\":%d,\"phase\":\"%s\",\"worked\":%d,\"limit\":%d,\"turn\":%s}"
                .formatted(
                        room.run(),
                        room.closed() ? "closed" : room.phase().word(),
                        room.phase().worked(now),
                        limit.orElse(-1),
                        turnJson(room.turn()));
    }

    private static String turnJson(Turn turn) {
        return "{\"problem\":%d,\"times\":%d,\"step\":\"%s\"}"
                .formatted(turn.problem(), turn.times(), turn.step().word());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
