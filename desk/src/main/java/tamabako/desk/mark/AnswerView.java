package tamabako.desk.mark;

import java.util.List;
import java.util.Optional;

/// One marked answer as the page shows it.
///
/// @param id the number of the problem
/// @param problem the problem in one line
/// @param written the answer as written, blank where nothing was
/// @param mark `right`, `wrong`, `wrong-form`, `empty` or `unclear`
/// @param right the right answer as it should be written
/// @param reason why it does not count, where there is more to say than that it is wrong
/// @param slips the likely slips behind a wrong answer
/// @param work the address where the problem is worked bead by bead
public record AnswerView(
        String id,
        String problem,
        String written,
        String mark,
        String right,
        Optional<String> reason,
        Optional<SlipView> slips,
        String work) {

    /// The slips behind one wrong answer.
    ///
    /// @param headline the whole finding in a line or two
    /// @param slips the likely ones, the likeliest first
    public record SlipView(String headline, List<Likely> slips) {
        public SlipView {
            slips = List.copyOf(slips);
        }
    }

    /// One slip in a sentence, and of a hundred such answers how many it stands behind.
    public record Likely(String sentence, int ofHundred) {}
}
