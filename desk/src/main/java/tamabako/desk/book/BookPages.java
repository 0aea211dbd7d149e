package tamabako.desk.book;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.records.ClassBook;

/// All pages of the class book.
public final class BookPages implements Routes {

    private final List<Routes> pages;

    /// @param clock tells the moment
    /// @param zone where the lessons are held
    /// @param traces who else keeps something of a pupil, and must let go of it when the pupil is
    ///   erased
    public BookPages(ClassBook book, InstantSource clock, ZoneId zone, List<PupilTraces> traces) {
        PupilPage pupil = new PupilPage(book, clock, zone);
        this.pages =
                List.of(
                        new GroupsPage(book, clock, zone),
                        new GroupPage(book, clock, zone),
                        new GroupFiles(book, zone),
                        new AttendancePage(book, clock, zone),
                        pupil,
                        new PupilEntries(book, pupil, clock),
                        new PupilEdit(book, clock, zone),
                        new PupilCopy(book, clock, zone),
                        new PupilErasing(book, traces));
    }

    @Override
    public List<Route> routes() {
        return pages.stream().flatMap(page -> page.routes().stream()).toList();
    }

    @Override
    public List<String> wordFiles() {
        return List.of("classbook", "keeping", "exams");
    }
}
