package tamabako.bench.insight;

import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Rates;
import tamabako.insight.slip.SlipKind;

/// The two kinds of pupils that are simulated: those of the shipped rates (R), and those who make
/// every kind of slip equally often (U).
final class Priors {

    private Priors() {}

    /// Prior R.
    static Rates shipped(EventTable table) {
        return Rates.shipped();
    }

    /// Prior U: on this problem every kind that it allows is made as often as any other, and as
    /// many slips in all as by prior R.
    static Rates even(EventTable table) {
        double expected = 0;
        int kinds = 0;
        for (SlipKind kind : SlipKind.values()) {
            if (kind != SlipKind.NONE_KNOWN && table.occasions(kind) > 0) {
                expected += Rates.shipped().of(kind) * table.occasions(kind);
                kinds++;
            }
        }
        double each = expected / kinds;
        return Rates.shipped()
                .with(kind ->
                        kind == SlipKind.NONE_KNOWN || table.occasions(kind) == 0
                                ? Rates.shipped().of(kind)
                                : Math.min(0.9, each / table.occasions(kind)));
    }
}
