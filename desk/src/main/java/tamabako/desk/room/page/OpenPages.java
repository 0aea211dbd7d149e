package tamabako.desk.room.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tamabako.desk.room.RoomState;
import tamabako.desk.room.Setup;
import tamabako.desk.room.journal.Rooms;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Reply;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.records.ClassBook;
import tamabako.records.KeptPapers;

/// The rooms that are open, and opening another.
final class OpenPages {

    private static final int SHEETS = 30;

    private static final int PAPERS = 10;

    private final ClassBook book;
    private final Rooms rooms;
    private final Opened opened;

    OpenPages(ClassBook book, Rooms rooms) {
        this.book = book;
        this.rooms = rooms;
        this.opened = new Opened(book);
    }

    Reply all(Request request) {
        return page(200, request.query(), "", request.words());
    }

    private Reply page(int status, Fields chosen, String fault, Words words) {
        return new Reply.Page(
                status,
                "room/rooms.jte",
                Map.of(
                        "rooms",
                        rooms.all(),
                        "waiting",
                        rooms.waiting(),
                        "sources",
                        sources(chosen.text("source"), words),
                        "groups",
                        book.groups().all(),
                        "chosen",
                        chosen,
                        "fault",
                        fault));
    }

    /// @param chosen a plan that came along from the page of its kind is one of them
    private List<SourceChoice> sources(String chosen, Words words) {
        List<SourceChoice> sources = new ArrayList<>();
        if (chosen.startsWith(Opened.CALL)) {
            sources.add(new SourceChoice(chosen, words.say("room.open.call")));
        }
        if (chosen.startsWith(Opened.SHOWING)) {
            sources.add(new SourceChoice(chosen, words.say("room.open.showing")));
        }
        book.sheets().latest(SHEETS).stream()
                .filter(kept -> !kept.sheet().problems().isEmpty())
                .map(kept ->
                        new SourceChoice(
                                "sheet:" + kept.sheet().id(),
                                kept.sheet().title() + " (" + kept.sheet().id() + ")"))
                .forEach(sources::add);
        for (KeptPapers.Entry entry : book.papers().latest(PAPERS)) {
            book.papers()
                    .find(entry.id())
                    .ifPresent(kept ->
                            kept.papers()
                                    .forEach(paper ->
                                            sources.add(
                                                    new SourceChoice(
                                                            "paper:"
                                                                    + entry.id()
                                                                    + ":"
                                                                    + paper.form(),
                                                            words.say(
                                                                    "room.open.paper",
                                                                    paper.grade()
                                                                            .name()
                                                                            .in(words.language()),
                                                                    paper.form(),
                                                                    paper.id())))));
        }
        return sources;
    }

    Reply take(Request request) {
        return switch (opened.read(request.form(), request.words())) {
            case Opened.Read.Bad(String fault) -> page(400, request.form(), fault, request.words());
            case Opened.Read.Good(Setup setup) -> {
                RoomState room = rooms.open(setup);
                yield Reply.seeOther("/room/" + room.id());
            }
        };
    }
}
