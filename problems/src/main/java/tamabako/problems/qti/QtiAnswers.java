package tamabako.problems.qti;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tamabako.problems.Answer;
import tamabako.problems.Problem;
import tamabako.problems.marking.Marker;
import tamabako.problems.marking.WritingRules;
import tamabako.problems.marking.Written;

/// The ways in which an item takes the right answer: with commas and without, with the sign of its
/// unit and without, a remainder in either language. Each is right by the writing rules of a
/// lesson.
final class QtiAnswers {

    private static final List<String> REMAINDERS = List.of(" r ", "r", " あまり ", "あまり", "…");

    private QtiAnswers() {}

    /// All of them; the exact figures first.
    static List<String> of(Problem problem) {
        Answer answer = problem.answer();
        Written written = Written.of(problem);
        Set<String> numbers = new LinkedHashSet<>();
        numbers.add(answer.figures());
        numbers.add(written.number().replace("−", "-"));
        numbers.add(written.number().replace("−", "-").replaceAll("[^\\d.,-]", ""));
        numbers.add(written.number());
        Set<String> forms = new LinkedHashSet<>();
        for (String number : numbers) {
            written.remainder()
                    .ifPresentOrElse(
                            left -> REMAINDERS.forEach(word -> forms.add(number + word + left)),
                            () -> forms.add(number));
        }
        forms.add(written.in(Locale.JAPANESE));
        return forms.stream().filter(form -> isRight(problem, form)).toList();
    }

    static boolean isRight(Problem problem, String written) {
        return Marker.mark(problem, written, WritingRules.EASY).isRight();
    }
}
