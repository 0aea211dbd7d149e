package tamabako.desk.exam;

import java.util.List;
import java.util.Locale;
import tamabako.desk.ladder.KnownLadders;
import tamabako.problems.grade.Ladder;

/// A ladder with its grades, to choose an exam from.
///
/// @param name the name of the ladder
public record ExamChoice(String name, List<Grade> grades) {

    public ExamChoice {
        grades = List.copyOf(grades);
    }

    /// A grade.
    ///
    /// @param value what its field has
    public record Grade(String value, String name, boolean chosen) {}

    static List<ExamChoice> all(KnownLadders ladders, ChosenExam.Read read, Locale language) {
        return ladders.all().stream()
                .map(known -> of(known.ladder(), read.exam(), language))
                .toList();
    }

    private static ExamChoice of(Ladder ladder, String chosen, Locale language) {
        return new ExamChoice(
                ladder.name().in(language),
                ladder.grades().stream()
                        .map(grade -> {
                            String value = ChosenExam.value(ladder.id(), grade.id());
                            return new Grade(
                                    value, grade.name().in(language), value.equals(chosen));
                        })
                        .toList());
    }
}
