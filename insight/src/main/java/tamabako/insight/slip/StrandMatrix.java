package tamabako.insight.slip;

/// Adds up, by strand and by cell, what may lead to one wrong answer, weighed by usual rates.
final class StrandMatrix {

    private static final int SINGLE = Strand.COUNT;

    private final EventTable table;
    private final Rates rates;
    private final double[][] matrix = new double[Strand.COUNT][Strand.COUNT + 1];
    private final CellShares.Adding cells = new CellShares.Adding();

    StrandMatrix(Explanations explanations, Rates rates) {
        this.table = explanations.table();
        this.rates = rates;
        int alone = explanations.alone();
        if (alone >= 0) {
            for (int place = table.start(alone); place < table.end(alone); place++) {
                double chance = table.chance(place, rates);
                alone(Slot.strand(table.slot(place)), chance);
                cells.alone(code(place), Slot.strand(table.slot(place)), chance);
            }
        }
        for (int i = 0; i < explanations.pairs(); i++) {
            pair(explanations.low(i), explanations.high(i));
        }
        for (int i = 0; i < explanations.pencils(); i++) {
            int strand = Slot.strand(Slot.of(explanations.pencil(i)));
            double chance =
                    rates.ofSlot(Slot.of(explanations.pencil(i))) * explanations.pencilWeight(i);
            work(explanations.before(i), strand, chance);
        }
    }

    private long code(int place) {
        return table.events().code(table.at(place));
    }

    /// One slip alone.
    void alone(int strand, double chance) {
        matrix[strand][SINGLE] += chance;
    }

    private void pair(int low, int high) {
        double times = low == high ? 0.5 : 1;
        for (int place = table.start(high); place < table.endOfWork(high); place++) {
            work(low, Slot.strand(table.slot(place)), times * table.chance(place, rates));
        }
        double ofLow = ofWork(low);
        for (int place = table.start(high); place < table.endOfWork(high); place++) {
            cells.paired(
                    code(place),
                    Slot.strand(table.slot(place)),
                    times * ofLow * table.chance(place, rates));
        }
    }

    /// The slips of the work in `group`, each with another that has `chance`.
    private void work(int group, int other, double chance) {
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            int strand = Slot.strand(table.slot(place));
            double both = chance * table.chance(place, rates);
            matrix[Math.min(strand, other)][Math.max(strand, other)] += both;
            cells.paired(code(place), strand, both);
        }
    }

    private double ofWork(int group) {
        double sum = 0;
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            sum += table.chance(place, rates);
        }
        return sum;
    }

    SlipTerms terms() {
        return SlipTerms.of(matrix);
    }

    CellShares cells() {
        return cells.shares();
    }
}
