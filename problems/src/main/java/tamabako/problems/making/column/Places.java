package tamabako.problems.making.column;

import tamabako.frame.walk.Tally;

/// Numbers for the places where a column of short rows can stand: rows so far, their signs as far
/// as they matter to those still to come, required techniques still missing, total.
final class Places {

    private final SignPatterns patterns;
    private final int rows;
    private final int runs;
    private final int signs;
    private final int required;
    private final int missingBits;
    private final int totalBits;

    /// Where the signs stand after a row that is added, and after one that is taken; -1 where that
    /// may not be. By rows and signs so far.
    private final int[] added;

    private final int[] taken;

    Places(Asked asked) {
        this.patterns = asked.patterns();
        this.rows = asked.shape().rows();
        int longest = asked.signs().longestRun();
        this.runs = longest < rows ? Math.max(0, longest) + 1 : 1;
        this.signs = (Math.min(asked.signs().mostMinus(), rows) + 1) * runs;
        this.required = Tally.bits(asked.required());
        this.missingBits = Integer.bitCount(required);
        this.totalBits =
                Integer.SIZE - Integer.numberOfLeadingZeros(NextRows.mostTotal(asked.shape()));
        this.added = new int[rows * signs];
        this.taken = new int[rows * signs];
        for (int i = 0; i < added.length; i++) {
            SignPatterns.Point point = point(i);
            added[i] = index(point.plus());
            taken[i] = patterns.mayTake(point) ? index(patterns.taken(point)) : -1;
        }
    }

    private SignPatterns.Point point(int index) {
        int sign = index % signs;
        return new SignPatterns.Point(index / signs, sign / runs, sign % runs);
    }

    /// The index of a point that leads to a whole pattern of signs; of any other, -1.
    private int index(SignPatterns.Point point) {
        return patterns.count(point).signum() > 0
                ? point.row() * signs + point.minus() * runs + point.run()
                : -1;
    }

    /// One more than the highest number.
    long count() {
        return (rows + 1L) * signs << (missingBits + totalBits);
    }

    int start() {
        return ((1 << missingBits) - 1) << totalBits;
    }

    boolean isWhole(int place) {
        return index(place) >= rows * signs;
    }

    boolean isFirst(int place) {
        return index(place) < signs;
    }

    private int index(int place) {
        return place >> (missingBits + totalBits);
    }

    private int missing(int place) {
        return (place >> totalBits) & ((1 << missingBits) - 1);
    }

    int total(int place) {
        return place & ((1 << totalBits) - 1);
    }

    /// Whether a whole column has all the techniques that it must have.
    boolean isGranted(int whole) {
        return missing(whole) == 0;
    }

    boolean mayAdd(int place) {
        return added[index(place)] >= 0;
    }

    boolean mayTake(int place) {
        return taken[index(place)] >= 0;
    }

    /// Where a column stands that stood at `place` and got a row, which uses these techniques.
    int after(int place, int number, int uses) {
        int index = index(place);
        int missing = missing(place) & ~Integer.compress(uses, required);
        int then = number < 0 ? taken[index] : added[index];
        return (((then << missingBits) | missing) << totalBits) | (total(place) + number);
    }
}
