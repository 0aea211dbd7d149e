package tamabako.paper.layout;

import java.util.Comparator;
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

    /// The answer of `section` that takes the most room.
    static PrintedAnswer longest(Section section) {
        return section.problems().stream()
                .map(PrintedAnswer::of)
                .max(
                        Comparator.comparingDouble(
                                each -> Cells.width(each.value()) + Cells.width(each.remainder())))
                .orElseThrow();
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
