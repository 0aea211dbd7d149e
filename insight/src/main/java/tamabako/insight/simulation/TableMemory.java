package tamabako.insight.simulation;

import tamabako.insight.slip.SlipKind;

/// A simulated pupil's multiplication table, which may give a wrong product.
final class TableMemory {

    private final Fate fate;

    TableMemory(Fate fate) {
        this.fate = fate;
    }

    /// What comes to mind for `first` times `second`, on the rod of its units.
    int recalls(int first, int second, int rod) {
        int product = first * second;
        int recalled = product;
        int[] wrong = {
            first * (second - 1),
            first * (second + 1),
            (first - 1) * second,
            (first + 1) * second,
            first + second,
            product + 10,
            product - 1,
            product + 1
        };
        for (int other : wrong) {
            boolean possible = product > 0 && other >= 0 && other <= 99 && other != product;
            if (possible && fate.falls(SlipKind.TABLE_SLIP, 0, rod, 1.0 / wrong.length)) {
                recalled = other;
            }
        }
        return recalled;
    }
}
