package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/// The slips that lead to one wrong answer, weighed by rates.
///
/// The answer's chance is `P0 * (S1 + S2 + S3) + eps * (1 - P0) * B`: `P0` that nothing else slips,
/// `S1`, `S2`, `S3` the single slips, pairs of the work, and slips of the pencil after one of the
/// work; `B` the background, and `eps` its share of the wrong answers.
final class Weighing implements Weighed {

    private final Explanations explanations;
    private final EventTable table;
    private final Rates rates;
    private final BigDecimal written;
    private final double background;
    private long[] codes = new long[64];
    private long[] tenths = new long[64];
    private double[] alone = new double[64];
    private double[] paired = new double[64];
    private int size;
    private double sumAlone;
    private double sumPaired;

    /// Whose single slips are weighed.
    enum Whose {
        ALL,
        /// Of the work: what is written stands on the frame.
        HAND,
        /// Of the pencil: what stands on the frame is right.
        PENCIL
    }

    Weighing(Explanations explanations, BigDecimal written, Rates rates) {
        this(explanations, written, rates, Whose.ALL);
    }

    Weighing(Explanations explanations, BigDecimal written, Rates rates, Whose whose) {
        this.explanations = explanations;
        this.table = explanations.table();
        this.rates = rates;
        this.written = written;
        double nothing = table.nothing(rates);
        weighAlone(nothing, whose);
        if (whose != Whose.PENCIL) {
            weighPairs(nothing);
        }
        if (whose == Whose.ALL) {
            weighPencil(nothing);
        }
        this.background =
                whose == Whose.PENCIL
                        ? 0
                        : rates.of(SlipKind.NONE_KNOWN)
                                * (1 - nothing)
                                * Background.evenly(written);
    }

    private void weighAlone(double nothing, Whose whose) {
        int group = explanations.alone();
        if (group < 0) {
            return;
        }
        int first = whose == Whose.PENCIL ? table.endOfWork(group) : table.start(group);
        int end = whose == Whose.HAND ? table.endOfWork(group) : table.end(group);
        for (int place = first; place < end; place++) {
            double chance = nothing * table.chance(place, rates);
            note(table.events().code(table.at(place)), table.tenths(group), chance, 0);
            sumAlone += chance;
        }
    }

    private void weighPairs(double nothing) {
        for (int i = 0; i < explanations.pairs(); i++) {
            int low = explanations.low(i);
            int high = explanations.high(i);
            double ofLow = ofWork(low);
            double ofHigh = low == high ? ofLow : ofWork(high);
            double both = nothing * ofLow * ofHigh * (low == high ? 0.5 : 1);
            sumPaired += both;
            noteWork(low, both / ofLow);
            noteWork(high, both / ofHigh);
        }
    }

    private void weighPencil(double nothing) {
        for (int i = 0; i < explanations.pencils(); i++) {
            int group = explanations.before(i);
            long code = explanations.pencil(i);
            double ofPencil = rates.ofSlot(Slot.of(code)) * explanations.pencilWeight(i);
            double both = nothing * ofWork(group) * ofPencil;
            sumPaired += both;
            noteWork(group, nothing * ofPencil);
            note(code, explanations.pencilTenths(i), 0, both);
        }
    }

    /// How often a slip of the work in `group` is made.
    private double ofWork(int group) {
        double sum = 0;
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            sum += table.chance(place, rates);
        }
        return sum;
    }

    private void noteWork(int group, double times) {
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            long code = table.events().code(table.at(place));
            note(code, table.tenths(group), 0, times * table.chance(place, rates));
        }
    }

    private void note(long code, long off, double chanceAlone, double chancePaired) {
        if (size == codes.length) {
            codes = Arrays.copyOf(codes, 2 * size);
            tenths = Arrays.copyOf(tenths, 2 * size);
            alone = Arrays.copyOf(alone, 2 * size);
            paired = Arrays.copyOf(paired, 2 * size);
        }
        codes[size] = code;
        tenths[size] = off;
        alone[size] = chanceAlone;
        paired[size] = chancePaired;
        size++;
    }

    @Override
    public double all() {
        return sumAlone + sumPaired + background;
    }

    @Override
    public double unexplained() {
        return sumAlone + sumPaired == 0 ? 1 : background / all();
    }

    @Override
    public Optional<Finding.Two> two() {
        return sumPaired == 0
                ? Optional.empty()
                : Evidence.wrong(explanations, written)
                        .likeliestTwo(rates)
                        .map(two -> new Finding.Two(two.first(), two.second(), sumPaired / all()));
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public long code(int i) {
        return codes[i];
    }

    @Override
    public long tenths(int i) {
        return tenths[i];
    }

    /// Each of two slips has half.
    @Override
    public double share(int i) {
        return (alone[i] + paired[i] / 2) / all();
    }

    @Override
    public double made(int i) {
        return (alone[i] + paired[i]) / all();
    }
}
