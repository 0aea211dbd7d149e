package tamabako.desk.mark;

import java.util.List;
import java.util.Optional;

/// Marked work as the page shows it.
///
/// @param sheet the identity of the sheet
/// @param title the title of the sheet
/// @param pupil whose work it is; empty where the teacher did not say
/// @param day when it was handed in
/// @param right how many answers count
/// @param answers every answer in the order of the sheet
public record ResultView(
        String sheet,
        String title,
        Optional<String> pupil,
        String day,
        long right,
        List<AnswerView> answers) {

    public ResultView {
        answers = List.copyOf(answers);
    }

    /// How many answers have that mark.
    public long count(String mark) {
        return answers.stream().filter(answer -> answer.mark().equals(mark)).count();
    }
}
