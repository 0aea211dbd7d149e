package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The slips of a column with running totals, weighed part by part.
///
/// A total that is not what the part before it should give was either worked wrong, and the work
/// went on from it, or worked right and written wrong, and the work went on from the right one. All
/// ways to choose are weighed together.
final class WeighedParts implements Weighed {

    private record Entry(long code, long tenths, double share, double made) {}

    /// What was found in the parts so far, on one way to choose.
    private record Way(double chance, List<Weighing> wrong) {

        Way with(Weighing weighing, double times) {
            List<Weighing> more = new ArrayList<>(wrong);
            more.add(weighing);
            return new Way(chance * times, more);
        }
    }

    private final Subtotals subtotals;
    private final BigDecimal answer;
    private final Rates rates;
    private final List<Way> ways = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private double all;
    private double unexplained;

    /// @param answer the answer as it was written
    WeighedParts(Subtotals subtotals, BigDecimal answer, Rates rates) {
        this.subtotals = subtotals;
        this.answer = answer;
        this.rates = rates;
        follow(0, BigDecimal.ZERO, new Way(1, List.of()));
        merge();
    }

    /// Whether every part could be weighed and some slip was made.
    boolean tells() {
        return all > 0 && (!entries.isEmpty() || unexplained > 0);
    }

    private void follow(int part, BigDecimal start, Way way) {
        int parts = subtotals.totals().size();
        int from = part == 0 ? 0 : subtotals.rows().get(part - 1);
        int to = part == parts ? subtotals.column().rows().size() : subtotals.rows().get(part);
        Optional<EventTable> listed = Part.of(subtotals.column(), from, to, start);
        if (listed.isEmpty()) {
            return;
        }
        EventTable table = listed.get();
        BigDecimal written = part == parts ? answer : subtotals.totals().get(part);
        double nothing = table.nothing(rates);
        if (written.compareTo(table.answer()) == 0) {
            next(part, table.answer(), new Way(way.chance() * nothing, way.wrong()));
            return;
        }
        Explanations explanations = Explanations.of(table, written);
        if (part == parts) {
            Weighing last = new Weighing(explanations, written, rates);
            ways.add(way.with(last, last.all()));
            return;
        }
        Weighing worked = new Weighing(explanations, written, rates, Weighing.Whose.HAND);
        next(part, written, way.with(worked, worked.all()));
        Weighing pencil = new Weighing(explanations, written, rates, Weighing.Whose.PENCIL);
        if (pencil.size() > 0) {
            next(part, table.answer(), way.with(pencil, pencil.all()));
        }
    }

    private void next(int part, BigDecimal stands, Way way) {
        if (part == subtotals.totals().size()) {
            ways.add(way);
        } else {
            follow(part + 1, stands, way);
        }
    }

    private void merge() {
        for (Way way : ways) {
            all += way.chance();
        }
        for (Way way : ways) {
            double chance = way.chance() / all;
            for (Weighing part : way.wrong()) {
                double share = chance / way.wrong().size();
                unexplained += share * part.unexplained();
                for (int i = 0; i < part.size(); i++) {
                    entries.add(
                            new Entry(
                                    part.code(i),
                                    part.tenths(i),
                                    share * part.share(i),
                                    chance * part.made(i)));
                }
            }
        }
    }

    @Override
    public int size() {
        return entries.size();
    }

    @Override
    public long code(int i) {
        return entries.get(i).code();
    }

    @Override
    public long tenths(int i) {
        return entries.get(i).tenths();
    }

    @Override
    public double share(int i) {
        return entries.get(i).share();
    }

    @Override
    public double made(int i) {
        return entries.get(i).made();
    }

    @Override
    public double unexplained() {
        return unexplained;
    }

    @Override
    public double all() {
        return all;
    }

    /// Two slips in two parts are told as two; which of them go together is not asked.
    @Override
    public Optional<Finding.Together> two() {
        return Optional.empty();
    }

    @Override
    public Optional<Finding.Together> three() {
        return Optional.empty();
    }
}
