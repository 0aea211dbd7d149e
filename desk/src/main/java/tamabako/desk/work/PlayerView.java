package tamabako.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tamabako.frame.words.StepWords;
import tamabako.problems.Column;

/// A worked sum as the page shows it.
///
/// @param worked the sum
/// @param groups every step, from the cleared frame to the answer
/// @param answer the answer in a sentence
public record PlayerView(Worked worked, List<StepGroup> groups, String answer) {

    /// The most figures, commas included, of a number that stands beside the frame.
    private static final int NARROW = 13;

    public PlayerView {
        groups = List.copyOf(groups);
    }

    static PlayerView of(Worked worked, Locale language) {
        List<StepNote> setting = StepNote.all(worked, worked.working().setting(), language);
        List<StepNote> work = StepNote.all(worked, worked.working().trace(), language);
        List<StepGroup> groups = new ArrayList<>(StepGroup.all(setting, true, 1));
        groups.addAll(StepGroup.all(work, false, setting.size() + 1));
        return new PlayerView(
                worked, groups, StepWords.of(language).answer(worked.working().outcome()));
    }

    /// The numbers of the sum, figure by figure.
    public List<SumFigures.Line> lines() {
        return new SumFigures(worked.problem()).lines();
    }

    /// Whether the numbers stand one under the other.
    public boolean isColumn() {
        return worked.problem() instanceof Column;
    }

    /// Whether the sum has room beside the frame: a column of not too long numbers.
    public boolean isBeside() {
        return isColumn() && lines().stream().allMatch(line -> line.figures().size() <= NARROW);
    }

    /// A sentence whose sums, such as `10 − 9 = 1`, are not broken at the end of a line.
    public static String unbroken(String sentence) {
        return sentence.replaceAll("(?<=\\d) ([=+−×]) (?=\\d)", "\u00a0$1\u00a0")
                .replaceAll("(?<=\\d)([＝＋－×])(?=\\d)", "\u2060$1\u2060");
    }

    /// The working for the page script.
    public String json() {
        return InPage.json(WorkJson.of(worked));
    }
}
