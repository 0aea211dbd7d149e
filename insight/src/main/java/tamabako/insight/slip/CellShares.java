package tamabako.insight.slip;

import java.util.Arrays;

/// In which cells the slips of the hand behind one wrong answer may have been made, weighed by
/// usual rates.
final class CellShares {

    static final CellShares NONE =
            new CellShares(new int[0], new int[0], new double[0], new double[0]);

    private final int[] cells;
    private final int[] strands;
    private final double[] alone;
    private final double[] together;

    private CellShares(int[] cells, int[] strands, double[] alone, double[] together) {
        this.cells = cells;
        this.strands = strands;
        this.alone = alone;
        this.together = together;
    }

    /// Adds how many slips were made in each cell, `times` times.
    ///
    /// Several slips at once are shared out among the cells of their strand as usual rates have it.
    void add(double[] factors, double times, SlipTerms terms, double[] slips) {
        if (cells.length == 0) {
            return;
        }
        double all = terms.sum(factors);
        double[] pairs = new double[Strand.COUNT];
        terms.addTogether(factors, all, pairs);
        double[] usual = new double[Strand.COUNT];
        for (int i = 0; i < cells.length; i++) {
            usual[strands[i]] += together[i];
        }
        for (int i = 0; i < cells.length; i++) {
            double both =
                    together[i] == 0 ? 0 : pairs[strands[i]] * together[i] / usual[strands[i]];
            slips[cells[i]] += times * (alone[i] * factors[strands[i]] / all + both);
        }
    }

    /// Adds up the cells of one answer; a cell may be met by its own move and by a carry that runs
    /// on.
    static final class Adding {

        private static final int MOVES = Move.values().length;

        private final double[] alone = new double[MOVES * Cell.COUNT];
        private final double[] together = new double[MOVES * Cell.COUNT];

        void alone(long code, int strand, double chance) {
            if (Code.cell(code) >= 0) {
                alone[strand * Cell.COUNT + Code.cell(code)] += chance;
            }
        }

        void together(long code, int strand, double chance) {
            if (Code.cell(code) >= 0) {
                together[strand * Cell.COUNT + Code.cell(code)] += chance;
            }
        }

        CellShares shares() {
            int[] places = new int[alone.length];
            int size = 0;
            for (int i = 0; i < alone.length; i++) {
                if (alone[i] > 0 || together[i] > 0) {
                    places[size++] = i;
                }
            }
            int[] met = Arrays.copyOf(places, size);
            return new CellShares(
                    Arrays.stream(met).map(i -> i % Cell.COUNT).toArray(),
                    Arrays.stream(met).map(i -> i / Cell.COUNT).toArray(),
                    Arrays.stream(met).mapToDouble(i -> alone[i]).toArray(),
                    Arrays.stream(met).mapToDouble(i -> together[i]).toArray());
        }
    }
}
