package tamabako.desk.entry;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import tamabako.desk.web.Days;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;

/// All pages for paper work.
public final class EntryPages implements Routes {

    private final List<Routes> pages;

    /// @param clock tells when work was handed in
    /// @param zone where the days are told
    public EntryPages(ClassBook book, InstantSource clock, ZoneId zone) {
        EntrySheets sheets = new EntrySheets(book, clock);
        GridPage grid = new GridPage(book, sheets, new Days(zone));
        this.pages =
                List.of(
                        new ChoosePage(book, sheets, new Days(zone)),
                        grid,
                        new LineKeeping(book, sheets, grid, clock),
                        new HandingOut(book, sheets, clock));
    }

    @Override
    public List<Route> routes() {
        return pages.stream().flatMap(page -> page.routes().stream()).toList();
    }

    @Override
    public List<String> wordFiles() {
        return List.of("entry");
    }
}
