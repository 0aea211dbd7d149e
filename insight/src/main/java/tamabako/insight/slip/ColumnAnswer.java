package tamabako.insight.slip;

import java.math.BigDecimal;
import java.util.Optional;
import tamabako.problems.Column;
import tamabako.problems.Mode;

/// A pupil's answer to a column that is worked on the frame with no total below zero on the way:
/// what [tamabako.insight.rule] works with.
public final class ColumnAnswer {

    private final EventTable table;
    private final long[] rows;
    private final long written;
    private final Evidence evidence;
    private final double evenly;

    private ColumnAnswer(
            EventTable table, long[] rows, long written, Evidence evidence, double evenly) {
        this.table = table;
        this.rows = rows;
        this.written = written;
        this.evidence = evidence;
        this.evenly = evenly;
    }

    /// The answer `written` to the problem of `table`; empty if it is no number, or the problem no
    /// such column.
    public static Optional<ColumnAnswer> of(EventTable table, String written) {
        if (!(table.problem() instanceof Column column)
                || column.terms().mode() != Mode.FRAME
                || table.slips() == 0) {
            return Optional.empty();
        }
        int places = table.places() - 1;
        return UnitRows.of(column)
                .filter(UnitRows::staysAboveZero)
                .flatMap(units -> of(table, units.rows(), places, written));
    }

    private static Optional<ColumnAnswer> of(
            EventTable table, long[] rows, int places, String written) {
        return SlipFinder.number(table, written)
                .flatMap(read -> Scaled.of(read, places).map(units -> new Read(read, units)))
                .flatMap(read ->
                        SlipFinder.evidence(table, written)
                                .map(evidence ->
                                        new ColumnAnswer(
                                                table,
                                                rows,
                                                read.units().units(),
                                                evidence,
                                                Background.evenly(read.number()))));
    }

    private record Read(BigDecimal number, Scaled units) {}

    /// The rows in units of their last place.
    public long[] rows() {
        return rows.clone();
    }

    /// The answer by slips alone.
    public Evidence evidence() {
        return evidence;
    }

    /// What slips do with other totals than the right one.
    public Slips slips(Rates rates) {
        return new Slips(rates);
    }

    /// The chances that slips lead from a total to the answer, each slip changing the total as it
    /// would the right one.
    public final class Slips {

        private final double[] chances;
        private final double nothing;
        private final double otherwise;

        private Slips(Rates rates) {
            this.nothing = table.nothing(rates);
            this.chances = new double[table.answers()];
            for (int group = 0; group < chances.length; group++) {
                for (int place = table.start(group); place < table.end(group); place++) {
                    chances[group] += nothing * table.chance(place, rates);
                }
            }
            this.otherwise = rates.of(SlipKind.NONE_KNOWN) * (1 - nothing) * evenly;
        }

        /// The chance that slips, or none, lead from `total`, in units of the last place, to the
        /// answer.
        public double lead(long total) {
            if (total == written) {
                return nothing;
            }
            int group = table.group(10 * (written - total));
            return group < 0 ? 0 : chances[group];
        }

        /// The chance of the answer where no known slip stands behind it.
        public double otherwise() {
            return otherwise;
        }
    }
}
