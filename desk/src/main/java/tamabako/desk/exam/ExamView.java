package tamabako.desk.exam;

import java.util.List;
import java.util.Optional;
import tamabako.records.Group;

/// What the page of exams shows.
///
/// @param group the group of a pupil who is alone
/// @param read which exam was chosen
/// @param choices every exam there is to choose
/// @param grid the lines of the chosen exam, if there is one
/// @param past exams that are written down already, the newest first
public record ExamView(
        Sitters sitters,
        Optional<Group> group,
        ChosenExam.Read read,
        List<ExamChoice> choices,
        Optional<ExamGrid> grid,
        List<PastExam.Line> past) {

    public ExamView {
        choices = List.copyOf(choices);
        past = List.copyOf(past);
    }
}
