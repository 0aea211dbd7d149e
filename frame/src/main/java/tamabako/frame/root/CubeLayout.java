package tamabako.frame.root;

/// Where the numbers of a cube root stand: the triple at the far left behind a spare rod for its
/// carry, two clear rods, the root, and the radicand at a distance right of it.
///
/// With A of k digits the root so far, 3A of m digits, and the first root digit on rod r, the next
/// one, b, goes on rod r - k. At distance d the units of the quotient `Q = remainder / 30A` stand
/// on `r - d - 3k + m + 2`, and Q must stand right of b. As the remainder is less than `1000(3A² +
/// 3A + 1)`, Q is less than `100(A + 1) + 34 / A`:
///
/// - for a first digit of 1 or 2, m = k and Q has at most k + 2 digits: d = 4 is enough. So it is
///   for 3 as long as A is one digit.
/// - for 3 to 8, m is k or k + 1 and Q has at most k + 2 digits: d = 5.
/// - for 9, m = k + 1, and Q has k + 3 digits where A is all nines: d = 6.
///
/// The remainder of that division stands right of Q's units as in any division. Adding back goes
/// from Q's last digit, as a product does, so no digit of Q is met before it is cleared. The
/// distances 4 and 5 are those of the handbook's 59319 and 51064811.
final class CubeLayout {

    private static final int GAP = 2;

    private CubeLayout() {}

    /// The layout for a triple that is set for the first `triples` digits of the root.
    static RootLayout of(RootSum sum, int triples) {
        int all = Math.max(sum.further(), 0);
        int root = Math.max(sum.firstRod(), 0) + 1;
        int lowest = sum.firstRod() - distance(sum.firstDigit(), all) - 3 * all;
        var left =
                new RootLayout.Left(
                        root + room(triples), triples == 0 ? 1 : GAP - 1, root + room(all));
        return new RootLayout(sum, distance(sum.firstDigit(), triples), left, lowest);
    }

    /// The rods left of the root: a spare one, the triple, and a clear one.
    private static int room(int triples) {
        return triples == 0 ? 0 : triples + 2;
    }

    private static int distance(int firstDigit, int triples) {
        return switch (firstDigit) {
            case 0, 1, 2 -> 4;
            case 3 -> triples <= 1 ? 4 : 5;
            case 4, 5, 6, 7, 8 -> 5;
            default -> 6;
        };
    }
}
