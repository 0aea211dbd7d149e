package tamabako.desk.room.page;

import java.util.List;
import java.util.Map;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;

/// The projector's page: what the whole class may see.
final class BoardPages {

    private final Rooms rooms;
    private final Live live;
    private final ShownPages shown;
    private final SlipGroups slips = new SlipGroups();

    BoardPages(Rooms rooms, Live live, ShownPages shown) {
        this.rooms = rooms;
        this.live = live;
        this.shown = shown;
    }

    Reply show(Request request) {
        return page(request, "room/board.jte");
    }

    /// The numbers that the projector shows.
    Reply showing(Request request) {
        return rooms.find(request.part("id"))
                .map(shown::forBoard)
                .orElseGet(() -> Reply.trouble(404, "no-room"));
    }

    Reply part(Request request) {
        return page(request, "room/board-part.jte");
    }

    private Reply page(Request request, String template) {
        return rooms.find(request.part("id"))
                .map(room -> Reply.page(template, Map.of("board", view(request, room))))
                .orElseGet(() -> Reply.trouble(404, "no-room"));
    }

    /// Slips are for the class only where right and wrong are.
    private BoardView view(Request request, RoomState room) {
        List<SlipGroup> groups = room.marksShown() ? slips.of(room, request.words()) : List.of();
        RoomView view =
                RoomView.of(
                        room,
                        live,
                        groups,
                        JoinAddress.of(request.caller()),
                        request.words().language());
        String join = view.address().address();
        return new BoardView(view, Qr.of(join + "/" + room.code()));
    }
}
