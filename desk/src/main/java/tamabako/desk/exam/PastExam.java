package tamabako.desk.exam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.web.Days;
import tamabako.problems.grade.ExamOutcome;
import tamabako.problems.grade.ExamOutcome.Came;
import tamabako.records.Pupil;

/// An outcome that is written down, and whose it is.
public record PastExam(Pupil pupil, ExamOutcome outcome) {

    /// An exam of the past.
    ///
    /// @param query the fields of the address that shows its lines
    /// @param day in words
    /// @param name of the grade
    /// @param ladder the name of the ladder
    /// @param passed how many passed
    /// @param sat how many sat it
    public record Line(
            String query, String day, String name, String ladder, long passed, long sat) {}

    /// The exams that these are of, the newest first.
    static List<Line> lines(List<PastExam> all, KnownLadders ladders, Locale language) {
        Map<String, List<PastExam>> exams = new LinkedHashMap<>();
        all.stream()
                .sorted(Comparator.comparing((PastExam one) -> one.outcome().day()).reversed())
                .forEach(one ->
                        exams.computeIfAbsent(query(one.outcome()), _ -> new ArrayList<>())
                                .add(one));
        List<Line> lines = new ArrayList<>();
        exams.forEach((query, sat) -> {
            ExamOutcome first = sat.getFirst().outcome();
            GradeName name = GradeName.of(ladders, first, language);
            lines.add(
                    new Line(
                            query,
                            Days.say(first.day(), language),
                            name.grade(),
                            name.ladder(),
                            count(sat, Came.PASSED),
                            sat.size() - count(sat, Came.NOT_SAT)));
        });
        return lines;
    }

    private static long count(List<PastExam> all, Came came) {
        return all.stream().filter(one -> one.outcome().came() == came).count();
    }

    private static String query(ExamOutcome outcome) {
        return ChosenExam.query(outcome.day(), outcome.ladder(), outcome.grade());
    }
}
