package tamabako.insight.slip;

/// Adds up, by strand and by cell, what may lead to one wrong answer, weighed by usual rates.
final class StrandMatrix {

    private final Explanations explanations;
    private final EventTable table;
    private final Rates rates;
    private final SlipTerms.Adding terms = new SlipTerms.Adding();
    private final CellShares.Adding cells = new CellShares.Adding();

    StrandMatrix(Explanations explanations, Rates rates) {
        this.explanations = explanations;
        this.table = explanations.table();
        this.rates = rates;
        Events alone = explanations.alone();
        for (int i = 0; i < alone.size(); i++) {
            int strand = strand(alone.code(i));
            alone(strand, chance(alone, i));
            cells.alone(alone.code(i), strand, chance(alone, i));
        }
        for (int i = 0; i < explanations.pairs(); i++) {
            pair(explanations.low(i), explanations.high(i));
        }
        explanations.exact().forEach(this::exact);
        explanations.triples().forEach(this::triple);
        for (int i = 0; i < explanations.pencils(); i++) {
            pencil(i);
        }
    }

    private int strand(int place) {
        return Slot.strand(table.slot(place));
    }

    private long code(int place) {
        return table.events().code(table.at(place));
    }

    /// One slip alone.
    void alone(int strand, double chance) {
        terms.single(strand, chance);
    }

    private void pair(int low, int high) {
        double times = low == high ? 0.5 : 1;
        for (int one = table.start(low); one < table.endOfWork(low); one++) {
            for (int other = table.start(high); other < table.endOfWork(high); other++) {
                if (explanations.addUp(one, other)) {
                    double both = times * table.chance(one, rates) * table.chance(other, rates);
                    terms.pair(strand(one), strand(other), both);
                    cells.together(code(one), strand(one), both);
                    cells.together(code(other), strand(other), both);
                }
            }
        }
    }

    private void exact(ExactPairs.Pair pair) {
        Events events = table.events();
        for (int i = 0; i < pair.second().size(); i++) {
            long first = events.code(pair.first());
            long second = pair.second().code(i);
            double both = chance(events, pair.first()) * chance(pair.second(), i);
            terms.pair(strand(first), strand(second), both);
            cells.together(first, strand(first), both);
            cells.together(second, strand(second), both);
        }
    }

    private static int strand(long code) {
        return Slot.strand(Slot.of(code));
    }

    private double chance(Events events, int i) {
        return rates.ofSlot(Slot.of(events.code(i))) * events.weight(i);
    }

    private void triple(Triples.Triple triple) {
        double[] low = strands(triple.low());
        double[] middle = strands(triple.middle());
        double[] high = strands(triple.high());
        for (int one = 0; one < Strand.COUNT; one++) {
            for (int two = 0; two < Strand.COUNT && low[one] > 0; two++) {
                for (int three = 0; three < Strand.COUNT && middle[two] > 0; three++) {
                    if (high[three] > 0) {
                        double all = triple.times() * low[one] * middle[two] * high[three];
                        terms.triple(one, two, three, all);
                    }
                }
            }
        }
        double all = triple.times() * sum(low) * sum(middle) * sum(high);
        cells(triple.low(), all / sum(low));
        cells(triple.middle(), all / sum(middle));
        cells(triple.high(), all / sum(high));
    }

    private void pencil(int i) {
        long code = explanations.pencil(i);
        double ofPencil = rates.ofSlot(Slot.of(code)) * explanations.pencilWeight(i);
        int group = explanations.before(i);
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            terms.pair(strand(place), strand(code), ofPencil * table.chance(place, rates));
        }
        cells(group, ofPencil);
    }

    /// The cells of the slips of the work in `group`, each with others that have `chance`.
    private void cells(int group, double chance) {
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            cells.together(code(place), strand(place), chance * table.chance(place, rates));
        }
    }

    /// How often the slips of the work in `group` are made, by strand.
    private double[] strands(int group) {
        double[] strands = new double[Strand.COUNT];
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            strands[strand(place)] += table.chance(place, rates);
        }
        return strands;
    }

    private static double sum(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum;
    }

    SlipTerms terms() {
        return terms.terms();
    }

    CellShares cells() {
        return cells.shares();
    }
}
