package tamabako.paper.layout;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import tamabako.paper.figures.PrintedNumber;
import tamabako.paper.wish.Unprintable;
import tamabako.paper.wish.Unprintable.Reason;
import tamabako.problems.Column;
import tamabako.problems.Pad;
import tamabako.problems.PadLine;

/// The leaves of a slip pad as they stand on paper.
///
/// @param leaves the amounts of each leaf from line 1; empty where nothing is known
record PrintedPad(List<List<String>> leaves) {

    /// The usual number of lines of a leaf.
    private static final int LINES = 5;

    PrintedPad {
        leaves = leaves.stream().map(List::copyOf).toList();
    }

    /// All of `pad`.
    static PrintedPad of(Pad pad, Optional<String> unit) {
        return new PrintedPad(
                pad.leaves().stream()
                        .map(leaf -> leaf.stream().map(amount -> shown(amount, unit)).toList())
                        .toList());
    }

    /// As much of a pad as `problems` tell of it.
    ///
    /// @throws Unprintable if two of them tell of different pads
    static PrintedPad of(List<Numbered> problems) {
        List<List<String>> leaves = new ArrayList<>();
        for (Numbered each : problems) {
            PadLine asked = (PadLine) each.problem().terms().told().orElseThrow();
            List<BigDecimal> rows = ((Column) each.problem()).rows();
            for (int i = 0; i < rows.size(); i++) {
                int leaf = asked.firstLeaf() + i;
                String amount = shown(rows.get(i), each.problem().terms().unit());
                List<String> lines = leaf(leaves, leaf, asked.line());
                String known = lines.set(asked.line() - 1, amount);
                if (!known.isEmpty() && !known.equals(amount)) {
                    throw new Unprintable(
                            new Reason.OtherPad(each.label(), asked.line(), leaf, known, amount));
                }
            }
        }
        return new PrintedPad(leaves);
    }

    private static List<String> leaf(List<List<String>> leaves, int leaf, int line) {
        while (leaves.size() < leaf) {
            leaves.add(new ArrayList<>(Collections.nCopies(LINES, "")));
        }
        if (line > leaves.getFirst().size()) {
            leaves.forEach(each -> each.addAll(Collections.nCopies(line - each.size(), "")));
        }
        return leaves.get(leaf - 1);
    }

    private static String shown(BigDecimal amount, Optional<String> unit) {
        return PrintedNumber.of(amount, unit).figures();
    }
}
