package tamabako.desk.progress;

import java.util.List;
import java.util.Locale;
import tamabako.desk.exam.GradeName;
import tamabako.desk.ladder.KnownLadders;
import tamabako.desk.web.Days;
import tamabako.desk.web.Words;

/// The exams that a pupil sat.
///
/// @param exams the newest first
public record ExamsPart(List<Line> exams) {

    public ExamsPart {
        exams = List.copyOf(exams);
    }

    /// An exam.
    ///
    /// @param day in words
    /// @param grade its name
    /// @param came what came of it, in words
    /// @param foretold what was to be foretold the day before, in a sentence; blank where the exam
    ///   was not sat
    /// @param here says that it was sat at this desk; blank where it was not
    public record Line(String day, String grade, String came, String foretold, String here) {}

    static ExamsPart of(List<PastExams.Exam> exams, KnownLadders ladders, Words words) {
        return new ExamsPart(exams.stream().map(exam -> line(exam, ladders, words)).toList());
    }

    private static Line line(PastExams.Exam exam, KnownLadders ladders, Words words) {
        Locale language = words.language();
        String rank = GradeName.rank(ladders, exam.outcome(), language);
        String foretold =
                exam.foretold()
                        .map(one -> words.say("exams.foretold", Decimals.chance(one.told())))
                        .orElseGet(() -> words.say("exams.not-foretold"));
        return new Line(
                Days.say(exam.outcome().day(), language),
                GradeName.of(ladders, exam.outcome(), language).grade(),
                rank.isEmpty() ? words.say("exams.came." + exam.outcome().came().word()) : rank,
                exam.outcome().isSat() ? foretold : "",
                exam.atDesk() ? words.say("exams.here") : "");
    }
}
