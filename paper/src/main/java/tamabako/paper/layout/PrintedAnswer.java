package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.figures.Cells;
import tamabako.paper.figures.PrintedNumber;
import tamabako.problems.marking.Written;

/// An answer as it stands in the key.
///
/// @param value the answer
/// @param remainder what is left over; empty where nothing is
record PrintedAnswer(String label, String value, String remainder) {

    static PrintedAnswer of(Numbered numbered) {
        Written written = Written.of(numbered.problem());
        return new PrintedAnswer(
                numbered.label(),
                PrintedNumber.printable(written.number()),
                PrintedNumber.printable(written.remainder().orElse("")));
    }

    /// The widest value of `answers`, in parts of the size of the figures.
    static double widestValue(List<PrintedAnswer> answers) {
        return answers.stream().mapToDouble(each -> Cells.width(each.value())).max().orElseThrow();
    }

    /// The widest remainder of `answers`, in parts of the size of the figures; 0 if there is none.
    static double widestRemainder(List<PrintedAnswer> answers) {
        return answers.stream()
                .mapToDouble(each -> Cells.width(each.remainder()))
                .max()
                .orElseThrow();
    }
}
