package tamabako.records.table;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import tamabako.problems.grade.ExamOutcome;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;
import tamabako.records.RecordsWords;
import tamabako.records.Result;
import tamabako.records.Work;

/// Gathers the lists of one group, with the names of their columns in one language.
///
/// @param zone where the lessons are held, for the days
public record GroupTables(ClassBook book, RecordsWords words, ZoneId zone) {

    /// The pupils with what is written down about them.
    public BookTable pupils(Group group) {
        List<List<String>> rows =
                book.pupils().in(group.id()).stream().map(pupil -> row(group, pupil)).toList();
        return table(
                group,
                "name kana group born grade language no-flashing extra-time pace roster-id",
                rows);
    }

    private static List<String> row(Group group, Pupil pupil) {
        return List.of(
                pupil.name(),
                pupil.about().kana(),
                group.name(),
                pupil.about().born().map(year -> "" + year.getValue()).orElse(""),
                pupil.about().grade(),
                pupil.language().toLanguageTag(),
                pupil.preferences().noFlashing() ? "1" : "0",
                "" + pupil.preferences().extraTime(),
                "" + pupil.preferences().pace(),
                pupil.about().rosterId());
    }

    /// The work that was handed in, one piece a row, and the results of exams and contests.
    public BookTable results(Group group) {
        List<List<String>> rows = new ArrayList<>();
        for (Pupil pupil : book.pupils().in(group.id())) {
            book.work().of(pupil.id()).forEach(work -> rows.add(row(pupil, work)));
            book.results().of(pupil.id()).forEach(result -> rows.add(row(pupil, result)));
            book.exams().of(pupil.id()).forEach(kept -> rows.add(row(pupil, kept.outcome())));
        }
        return table(group, "name day kind title points of seconds outcome", rows);
    }

    private List<String> row(Pupil pupil, Work work) {
        String title =
                book.sheets().find(work.sheetId()).map(kept -> kept.sheet().title()).orElse("");
        return List.of(
                pupil.name(),
                LocalDate.ofInstant(work.handedAt(), zone).toString(),
                words.say("table.work", Map.of()),
                title,
                "" + work.right(),
                "" + work.answers().size(),
                work.took().map(Duration::toSeconds).map(String::valueOf).orElse(""),
                "");
    }

    private List<String> row(Pupil pupil, Result result) {
        String kind = result.kind().name().toLowerCase(Locale.ROOT);
        return List.of(
                pupil.name(),
                result.day().toString(),
                words.say("table." + kind, Map.of()),
                result.name(),
                result.score().map(score -> "" + score.points()).orElse(""),
                result.score().map(score -> "" + score.most()).orElse(""),
                "",
                result.outcome());
    }

    /// An exam by the names of its ladder and grade, with the points of all sections together.
    private List<String> row(Pupil pupil, ExamOutcome exam) {
        int points = exam.points().values().stream().mapToInt(Integer::intValue).sum();
        return List.of(
                pupil.name(),
                exam.day().toString(),
                words.say("table.exam", Map.of()),
                exam.ladder() + " " + exam.grade(),
                exam.points().isEmpty() ? "" : "" + points,
                "",
                "",
                words.say("table.came." + exam.came().word(), Map.of())
                        + exam.rank().map(rank -> " " + rank).orElse(""));
    }

    private BookTable table(Group group, String columns, List<List<String>> rows) {
        return new BookTable(
                group.name(),
                Stream.of(columns.split(" "))
                        .map(column -> words.say("table." + column, Map.of()))
                        .toList(),
                rows);
    }
}
