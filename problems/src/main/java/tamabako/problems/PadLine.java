package tamabako.problems;

/// The numbers stand on one line of the leaves of a slip pad (denpyōzan): the same line of so many
/// leaves running.
///
/// @param line the line of each leaf, from 1
/// @param firstLeaf the leaf to begin with, from 1
/// @param leaves how many leaves are added, 1 or more
public record PadLine(int line, int firstLeaf, int leaves) implements Told {

    public PadLine {
        if (line < 1 || firstLeaf < 1 || leaves < 1) {
            throw new IllegalArgumentException(
                    "Lines and leaves count from 1: line %d, leaf %d, %d leaves."
                            .formatted(line, firstLeaf, leaves));
        }
    }

    /// The last leaf that is added.
    public int lastLeaf() {
        return firstLeaf + leaves - 1;
    }
}
