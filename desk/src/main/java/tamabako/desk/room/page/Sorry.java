package tamabako.desk.room.page;

import java.util.List;
import java.util.Map;
import tamabako.desk.room.Refusal;
import tamabako.desk.web.Reply;

/// A plain message to a pupil, and a way on.
///
/// @param key names the texts `room.KEY.what` and `room.KEY.mend`
/// @param values the values named in the texts
/// @param on the address of the way on
public record Sorry(String key, List<Object> values, String on) {

    public Sorry {
        values = List.copyOf(values);
    }

    static Reply reply(int status, String key, String on, Object... values) {
        return new Reply.Page(
                status, "room/sorry.jte", Map.of("sorry", new Sorry(key, List.of(values), on)));
    }

    static Reply reply(Refusal why, String on) {
        return reply(409, "refused." + why.word(), on);
    }
}
