package tamabako.desk.room.page;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.room.live.Live;
import tamabako.desk.web.Access;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;

/// All pages of the rooms.
public final class RoomPages implements Routes {

    private final OpenPages open;
    private final TeacherPages teacher;
    private final CallerPages caller;
    private final BoardPages board;
    private final JoinPages join;
    private final SeatPages seat;

    /// @param rooms what is open
    /// @param live who looks
    public RoomPages(ClassBook book, Rooms rooms, Live live, InstantSource clock) {
        ShownPages shown = new ShownPages(book);
        this.open = new OpenPages(book, rooms);
        this.teacher = new TeacherPages(rooms, live, clock);
        this.caller = new CallerPages(rooms, teacher);
        this.board = new BoardPages(rooms, live, shown);
        this.join = new JoinPages(rooms, clock);
        this.seat = new SeatPages(rooms, live, shown, clock);
    }

    @Override
    public List<Route> routes() {
        List<Route> routes = new ArrayList<>();
        ofTeacher().forEach(route -> routes.add(route.forWhom(Access.ASSISTANT)));
        ofPupil().forEach(route -> routes.add(route.forWhom(Access.PUPIL)));
        return routes;
    }

    private List<Route> ofTeacher() {
        return List.of(
                Route.get("/rooms", open::all),
                Route.post("/rooms", open::take),
                Route.get("/room/{id}", teacher::show),
                Route.get("/room/{id}/part", teacher::part),
                Route.get("/room/{id}/stream", teacher::stream),
                Route.get("/room/{id}/pins", teacher::pins),
                Route.get("/room/{id}/late", teacher::late),
                Route.post("/room/{id}/do", teacher::command),
                Route.post("/room/{id}/seat", teacher::seat),
                Route.get("/room/{id}/call", caller::show),
                Route.get("/room/{id}/call/part", caller::part),
                Route.get("/room/{id}/call/sound", caller::sound),
                Route.get("/room/{id}/board", board::show),
                Route.get("/room/{id}/board/part", board::part),
                Route.get("/room/{id}/board/showing", board::showing));
    }

    private List<Route> ofPupil() {
        return List.of(
                Route.get("/join", join::ask),
                Route.post("/join", join::take),
                Route.get("/join/{code}", join::names),
                Route.post("/join/{code}", join::sit),
                Route.post("/join/{code}/move", join::move),
                Route.get("/seat/{id}", seat::show),
                Route.get("/seat/{id}/hello", seat::hello),
                Route.get("/seat/{id}/state", seat::state),
                Route.get("/seat/{id}/problems", seat::problems),
                Route.get("/seat/{id}/showing", seat::showing),
                Route.get("/seat/{id}/sound", seat::sound),
                Route.post("/seat/{id}/ran", seat::ran),
                Route.get("/seat/{id}/stream", seat::stream),
                Route.post("/seat/{id}/answers", seat::answers),
                Route.post("/seat/{id}/move", seat::move));
    }

    @Override
    public List<String> wordFiles() {
        return List.of("room", "turns", "work");
    }
}
