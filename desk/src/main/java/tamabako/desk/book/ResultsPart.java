package tamabako.desk.book;

import java.util.List;
import java.util.Locale;
import tamabako.records.ClassBook;
import tamabako.records.Pupil;
import tamabako.records.Result;

/// The results of one pupil in exams and contests.
///
/// @param results the newest first
public record ResultsPart(List<Entry> results) {

    public ResultsPart {
        results = List.copyOf(results);
    }

    /// One result.
    ///
    /// @param kind `exam` or `contest`
    /// @param day in words
    /// @param score the points, such as `230 / 300`; blank where they are not known
    /// @param outcome in the teacher's words; may be blank
    public record Entry(
            String id, String kind, String name, String day, String score, String outcome) {}

    static ResultsPart of(ClassBook book, Pupil pupil, Telling telling) {
        return new ResultsPart(
                book.results().of(pupil.id()).reversed().stream()
                        .map(result -> entry(result, telling))
                        .toList());
    }

    private static Entry entry(Result result, Telling telling) {
        return new Entry(
                result.id(),
                result.kind().name().toLowerCase(Locale.ROOT),
                result.name(),
                telling.day(result.day()),
                result.score().map(score -> score.points() + " / " + score.most()).orElse(""),
                result.outcome());
    }
}
