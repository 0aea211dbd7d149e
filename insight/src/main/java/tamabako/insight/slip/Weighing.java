package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Optional;

/// The slips that lead to one wrong answer, weighed by rates.
///
/// The answer's chance is `P0 * (S1 + S2 + S3) + eps * (1 - P0) * B`: `P0` that nothing else slips,
/// `S1`, `S2`, `S3` the single slips, pairs (or else triples) of the work, and slips of the pencil
/// after one of the work; `B` the background, and `eps` its share of the wrong answers.
final class Weighing implements Weighed {

    private static final int TWO = 2;
    private static final int THREE = 3;

    private final Explanations explanations;
    private final EventTable table;
    private final Rates rates;
    private final BigDecimal written;
    private final double nothing;
    private final double background;
    private final Notes notes = new Notes();

    /// The chance of all ways to make so many slips.
    private final double[] sums = new double[THREE + 1];

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
        this.nothing = table.nothing(rates);
        weighAlone(whose);
        if (whose != Whose.PENCIL) {
            weighPairs();
            explanations.exact().forEach(this::weighExact);
            explanations.triples().forEach(this::weighTriple);
        }
        if (whose == Whose.ALL) {
            weighPencil();
        }
        this.background =
                whose == Whose.PENCIL
                        ? 0
                        : rates.of(SlipKind.NONE_KNOWN)
                                * (1 - nothing)
                                * Background.evenly(written);
    }

    private void weighAlone(Whose whose) {
        Events alone = explanations.alone();
        int first = whose == Whose.PENCIL ? alone.ofWork() : 0;
        int end = whose == Whose.HAND ? alone.ofWork() : alone.size();
        for (int i = first; i < end; i++) {
            double chance = nothing * chance(alone, i);
            notes.add(alone.code(i), alone.tenths(i), chance, 1);
            sums[1] += chance;
        }
    }

    private void weighPairs() {
        for (int i = 0; i < explanations.pairs(); i++) {
            int low = explanations.low(i);
            int high = explanations.high(i);
            // Each pair within one group is met twice, once from either side.
            double times = low == high ? nothing / 2 : nothing;
            notePartners(low, high, times);
            notePartners(high, low, times);
        }
    }

    /// Notes the slips of one group, each with the chance of those that it makes a pair with.
    private void notePartners(int group, int partners, double times) {
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            double partner = 0;
            for (int other = table.start(partners); other < table.endOfWork(partners); other++) {
                partner += explanations.addUp(place, other) ? table.chance(other, rates) : 0;
            }
            double both = times * table.chance(place, rates) * partner;
            sums[TWO] += both / TWO;
            notes.add(table.events().code(table.at(place)), table.tenths(group), both, TWO);
        }
    }

    private void weighExact(ExactPairs.Pair pair) {
        Events events = table.events();
        double ofFirst = chance(events, pair.first());
        double ofSecond = 0;
        for (int i = 0; i < pair.second().size(); i++) {
            double chance = chance(pair.second(), i);
            ofSecond += chance;
            double both = nothing * ofFirst * chance;
            notes.add(pair.second().code(i), pair.second().tenths(i), both, TWO);
        }
        double both = nothing * ofFirst * ofSecond;
        sums[TWO] += both;
        notes.add(events.code(pair.first()), events.tenths(pair.first()), both, TWO);
    }

    private void weighTriple(Triples.Triple triple) {
        double low = ofWork(triple.low());
        double middle = ofWork(triple.middle());
        double high = ofWork(triple.high());
        double all = nothing * triple.times() * low * middle * high;
        sums[THREE] += all;
        noteWork(triple.low(), all / low, THREE);
        noteWork(triple.middle(), all / middle, THREE);
        noteWork(triple.high(), all / high, THREE);
    }

    private void weighPencil() {
        for (int i = 0; i < explanations.pencils(); i++) {
            int group = explanations.before(i);
            long code = explanations.pencil(i);
            double ofPencil = rates.ofSlot(Slot.of(code)) * explanations.pencilWeight(i);
            double both = nothing * ofWork(group) * ofPencil;
            sums[TWO] += both;
            noteWork(group, nothing * ofPencil, TWO);
            notes.add(code, explanations.pencilTenths(i), both, TWO);
        }
    }

    private double chance(Events events, int i) {
        return rates.ofSlot(Slot.of(events.code(i))) * events.weight(i);
    }

    /// How often a slip of the work in `group` is made.
    private double ofWork(int group) {
        double sum = 0;
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            sum += table.chance(place, rates);
        }
        return sum;
    }

    private void noteWork(int group, double times, int among) {
        for (int place = table.start(group); place < table.endOfWork(group); place++) {
            long code = table.events().code(table.at(place));
            notes.add(code, table.tenths(group), times * table.chance(place, rates), among);
        }
    }

    private double known() {
        return sums[1] + sums[TWO] + sums[THREE];
    }

    @Override
    public double all() {
        return known() + background;
    }

    @Override
    public double unexplained() {
        return known() == 0 ? 1 : background / all();
    }

    @Override
    public Optional<Finding.Together> two() {
        return together(TWO);
    }

    @Override
    public Optional<Finding.Together> three() {
        return together(THREE);
    }

    private Optional<Finding.Together> together(int slips) {
        return sums[slips] == 0
                ? Optional.empty()
                : Optional.of(
                        new Finding.Together(
                                Evidence.wrong(explanations, written).likeliest(slips, rates),
                                sums[slips] / all()));
    }

    @Override
    public int size() {
        return notes.size();
    }

    @Override
    public long code(int i) {
        return notes.code(i);
    }

    @Override
    public long tenths(int i) {
        return notes.tenths(i);
    }

    /// Slips made at once have equal parts.
    @Override
    public double share(int i) {
        return notes.part(i) / all();
    }

    @Override
    public double made(int i) {
        return notes.chance(i) / all();
    }
}
