package tamabako.paper.layout;

import java.util.List;
import tamabako.paper.layout.Mark.Words;

/// The numbers of problems at the left of their lines.
final class Labels {

    private Labels() {}

    /// The room for the numbers and the clear room after them.
    static double width(List<String> labels, Setting setting) {
        double widest =
                labels.stream()
                        .mapToDouble(each -> setting.width(Face.BOLD, size(setting), each))
                        .max()
                        .orElseThrow();
        return Math.max(widest, setting.pick(14, 24)) + clear(setting);
    }

    /// A number in a room that ends at `end`.
    static Words mark(String label, double end, double baseline, Setting setting) {
        double right = end - clear(setting);
        return setting.endingAt(right, baseline, Face.BOLD, size(setting), Ink.BLACK, label);
    }

    private static double size(Setting setting) {
        return setting.pick(9, 18);
    }

    /// Between a number and its problem.
    private static double clear(Setting setting) {
        return setting.pick(6, 10);
    }
}
