package tamabako.problems;

import java.math.BigDecimal;
import java.util.List;

/// A slip pad (denpyō): leaves bound on one side, each with the same number of numbered amounts.
///
/// @param leaves the leaves from the first; each lists its amounts from line 1
public record Pad(List<List<BigDecimal>> leaves) {

    public Pad {
        leaves = leaves.stream().map(List::copyOf).toList();
        if (leaves.stream().map(List::size).distinct().count() != 1) {
            throw new IllegalArgumentException("Every leaf of a pad has the same lines.");
        }
    }

    /// The amounts that `line` asks for, in their order.
    ///
    /// @throws IndexOutOfBoundsException if the pad has no such line or leaf
    public List<BigDecimal> rows(PadLine line) {
        return leaves.subList(line.firstLeaf() - 1, line.lastLeaf()).stream()
                .map(leaf -> leaf.get(line.line() - 1))
                .toList();
    }
}
