package tamabako.desk.exam;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Days;
import tamabako.desk.web.Request;
import tamabako.desk.web.Words;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.problems.grade.Pass;
import tamabako.records.KeptOutcome;
import tamabako.records.Pupil;

/// The lines of one exam: one a pupil.
///
/// @param name of the grade
/// @param ladder the name of the ladder
/// @param day in words
/// @param iso the day as ISO 8601
/// @param exam what the field for ladder and grade has
/// @param comes what may come of it
/// @param columns a section each, whose points may be given
/// @param sum how many passed and so on, in a sentence; blank where nothing is kept yet
public record ExamGrid(
        String name,
        String ladder,
        String day,
        String iso,
        String exam,
        List<Come> comes,
        List<Column> columns,
        List<Line> lines,
        String sum) {

    public ExamGrid {
        comes = List.copyOf(comes);
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
    }

    /// What may come of an exam.
    ///
    /// @param value what its field has; blank for nothing known
    public record Come(String value, String name) {}

    /// A section.
    ///
    /// @param most the most points that it can bring
    public record Column(String id, String name, int most) {}

    /// A pupil's line.
    ///
    /// @param came what its field has
    /// @param points what stands in the fields of the sections, in their order
    /// @param fault what cannot be taken, and how to mend it; blank for nothing
    /// @param wrong the field that is to blame: `came`, the name of a section, or blank
    public record Line(Pupil pupil, String came, List<String> points, String fault, String wrong) {

        public Line {
            points = List.copyOf(points);
        }
    }

    /// The grid as it is kept.
    static ExamGrid of(
            ChosenExam exam, List<Pupil> pupils, List<KeptOutcome> kept, Request request) {
        Map<String, KeptOutcome> known = new HashMap<>();
        kept.forEach(one -> known.put(one.pupilId(), one));
        List<Line> lines = new ArrayList<>();
        Map<Came, Integer> sum = new HashMap<>();
        for (Pupil pupil : pupils) {
            Optional<KeptOutcome> one = Optional.ofNullable(known.get(pupil.id()));
            one.ifPresent(found -> sum.merge(found.outcome().came(), 1, Integer::sum));
            lines.add(line(exam, pupil, one));
        }
        return grid(exam, lines, sum(sum, request.words()), request.words().language());
    }

    /// The grid as it was typed, with what cannot be taken.
    static ExamGrid typed(ChosenExam exam, List<Pupil> pupils, ExamLines typed, Request request) {
        List<Line> lines = pupils.stream().map(typed::asTyped).toList();
        return grid(exam, lines, "", request.words().language());
    }

    private static ExamGrid grid(ChosenExam exam, List<Line> lines, String sum, Locale language) {
        return new ExamGrid(
                exam.name(language),
                exam.ladder().name().in(language),
                Days.say(exam.day(), language),
                exam.day().toString(),
                ChosenExam.value(exam.ladder().id(), exam.grade().id()),
                comes(exam.grade().pass(), language),
                exam.grade().sections().stream()
                        .map(section ->
                                new Column(
                                        section.id(),
                                        section.name().in(language),
                                        section.fullMarks()))
                        .toList(),
                lines,
                sum);
    }

    private static String sum(Map<Came, Integer> sum, Words words) {
        return sum.isEmpty()
                ? ""
                : words.say(
                        "exams.sum",
                        sum.getOrDefault(Came.PASSED, 0),
                        sum.getOrDefault(Came.NOT_PASSED, 0),
                        sum.getOrDefault(Came.NOT_SAT, 0));
    }

    /// Ranks stand for themselves, from the highest down; where there are none, "passed" does.
    private static List<Come> comes(Pass pass, Locale language) {
        List<Come> comes = new ArrayList<>();
        if (pass instanceof Pass.ByScore byScore) {
            byScore.ranks()
                    .reversed()
                    .forEach(rank ->
                            comes.add(
                                    new Come(
                                            ExamLines.RANK + rank.id(), rank.name().in(language))));
        } else {
            comes.add(new Come(Came.PASSED.word(), ""));
        }
        comes.add(new Come(Came.NOT_PASSED.word(), ""));
        comes.add(new Come(Came.NOT_SAT.word(), ""));
        return comes;
    }

    private static Line line(ChosenExam exam, Pupil pupil, Optional<KeptOutcome> kept) {
        String came =
                kept.map(KeptOutcome::outcome)
                        .map(one ->
                                one.rank()
                                        .map(rank -> ExamLines.RANK + rank)
                                        .orElse(one.came().word()))
                        .orElse("");
        List<String> points =
                exam.grade().sections().stream()
                        .map(section ->
                                kept.flatMap(one ->
                                                Optional.ofNullable(
                                                        one.outcome().points().get(section.id())))
                                        .map(String::valueOf)
                                        .orElse(""))
                        .toList();
        return new Line(pupil, came, points, "", "");
    }
}
