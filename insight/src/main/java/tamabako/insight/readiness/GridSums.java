package tamabako.insight.readiness;

/// Sums of lognormal times on a grid: each time is rounded to a cell, and the cells are folded one
/// problem after another. Whatever is longer than the longest time is left out.
final class GridSums implements TimeSums {

    private static final int CELLS = 600;

    private final double cell;
    private final double[][] below;

    GridSums(double[] means, double spread, double longest) {
        this.cell = Math.exp(longest) / CELLS;
        this.below = new double[means.length][];
        double[] sum = new double[CELLS + 1];
        sum[0] = 1;
        for (int i = 0; i < means.length; i++) {
            sum = folded(sum, cells(means[i], spread));
            below[i] = added(sum);
        }
    }

    private double[] cells(double mean, double spread) {
        double[] cells = new double[CELLS + 1];
        double before = 0;
        for (int i = 0; i <= CELLS; i++) {
            double here = NormalCurve.below((Math.log((i + 0.5) * cell) - mean) / spread);
            cells[i] = here - before;
            before = here;
        }
        return cells;
    }

    private static double[] folded(double[] some, double[] others) {
        double[] both = new double[some.length];
        for (int i = 0; i < some.length; i++) {
            double one = some[i];
            if (one > 0) {
                for (int j = 0; i + j < both.length; j++) {
                    both[i + j] += one * others[j];
                }
            }
        }
        return both;
    }

    /// The chance of at most the middle of each cell: half of the cell itself counts.
    private static double[] added(double[] cells) {
        double[] below = new double[cells.length];
        double sum = 0;
        for (int i = 0; i < cells.length; i++) {
            below[i] = sum + cells[i] / 2;
            sum += cells[i];
        }
        return below;
    }

    @Override
    public double within(int count, double limit) {
        double at = Math.min(CELLS, Math.exp(limit) / cell);
        int low = Math.min(CELLS - 1, (int) at);
        double[] chances = below[count - 1];
        return chances[low] + (at - low) * (chances[low + 1] - chances[low]);
    }
}
