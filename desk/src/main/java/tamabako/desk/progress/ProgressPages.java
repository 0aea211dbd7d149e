package tamabako.desk.progress;

import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.function.LongSupplier;
import tamabako.desk.book.PupilTraces;
import tamabako.desk.web.Route;
import tamabako.desk.web.Routes;
import tamabako.insight.readiness.Outlines;
import tamabako.records.ClassBook;

/// All pages of how pupils get on.
public final class ProgressPages implements Routes, PupilTraces {

    private final Progress progress;
    private final PastExams exams;
    private final List<Routes> pages;

    /// @param clock tells the moment
    /// @param zone where the lessons are held
    /// @param seeds where fresh seeds come from
    public ProgressPages(ClassBook book, InstantSource clock, ZoneId zone, LongSupplier seeds) {
        this.progress = new Progress(book, zone);
        ChosenLadder chosen = new ChosenLadder(book);
        Outlines outlines = new Outlines(progress.tables());
        this.exams = new PastExams(book, progress, outlines, zone);
        NextOnLadder next = new NextOnLadder(chosen, outlines, exams);
        this.pages =
                List.of(
                        new PupilProgressPage(book, progress, chosen, next, exams),
                        new GroupProgressPage(book, progress, next, exams),
                        new ReportPage(book, progress, next, clock, zone),
                        new PracticePages(
                                book,
                                progress,
                                new Planning(next, progress.tables()),
                                clock,
                                zone,
                                seeds));
    }

    @Override
    public List<Route> routes() {
        return pages.stream().flatMap(page -> page.routes().stream()).toList();
    }

    @Override
    public List<String> wordFiles() {
        return List.of("progress", "exams");
    }

    @Override
    public void erase(String pupilId) {
        progress.erase(pupilId);
        exams.erase(pupilId);
    }
}
