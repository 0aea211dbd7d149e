package tamabako.desk.room.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import tamabako.desk.room.Seat;

/// How a tablet stands to a seat.
enum Standing {
    /// It is the seat's tablet.
    HERE,
    /// It asked to go on with the seat.
    ASKING,
    /// The seat went on to another one.
    MOVED,
    /// The teacher took the seat away.
    REMOVED,
    /// It has nothing to do with it.
    STRANGER;

    static Standing of(Seat seat, String key) {
        Seat.Keys keys = seat.keys();
        if (isSame(keys.key(), key)) {
            return seat.removed() ? REMOVED : HERE;
        }
        if (isSame(keys.asking(), key)) {
            return ASKING;
        }
        return isSame(keys.former(), key) ? MOVED : STRANGER;
    }

    private static boolean isSame(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.US_ASCII), other.getBytes(StandardCharsets.US_ASCII));
    }
}
