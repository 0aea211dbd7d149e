package tamabako.paper;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import tamabako.paper.Pages.Line;

/// The leaves of slip pads, read from their pages.
final class PadPages {

    private PadPages() {}

    /// A leaf and where it lies.
    ///
    /// @param number as it is printed on the leaf
    /// @param page the page, from 0
    /// @param right where its number ends, and `below` how far down it stands, in points
    record Leaf(int number, List<BigDecimal> amounts, int page, double right, double below) {}

    /// All leaves in the order of their print: on each a line of name and number, then the amounts.
    static List<Leaf> leaves(Pages pages) {
        List<Leaf> leaves = new ArrayList<>();
        for (int page = 0; page < pages.pages().size(); page++) {
            List<Line> lines = pages.pages().get(page);
            for (int i = 0; i < lines.size(); i++) {
                String text = lines.get(i).text();
                if (text.contains("7KMX")) {
                    // The number is printed first, and the name stands on the same line.
                    var first = lines.get(i).positions();
                    int number = Integer.parseInt(number(lines.get(i)));
                    leaves.add(
                            new Leaf(
                                    number,
                                    amounts(lines, i + 1),
                                    page,
                                    right(lines.get(i)),
                                    first.getFirst().getYDirAdj()));
                }
            }
        }
        return leaves;
    }

    private static List<BigDecimal> amounts(List<Line> lines, int first) {
        List<BigDecimal> amounts = new ArrayList<>();
        for (int i = first; i < lines.size() && !lines.get(i).text().contains("7KMX"); i++) {
            amounts.add(Reader.value(lines.get(i).text().replaceFirst("^\\d ", "")));
        }
        return amounts;
    }

    private static String number(Line line) {
        return line.text().replaceAll(".*7KMX-2P9T-\\w+", "").replaceAll("\\D", "");
    }

    private static double right(Line line) {
        return line.positions().stream()
                .mapToDouble(each -> each.getXDirAdj() + each.getWidthDirAdj())
                .max()
                .orElseThrow();
    }
}
