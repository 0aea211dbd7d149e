package tamabako.problems.making.column;

import tamabako.problems.making.column.Fills.Fill;

/// Fills by the kind of leads, to be looked up many times.
final class FillTable {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final Fill[] fills;
    private final int bits;

    /// @param all one at least
    FillTable(Fill[] all) {
        this.bits = Integer.SIZE - Integer.numberOfLeadingZeros(2 * all.length);
        this.fills = new Fill[1 << bits];
        for (Fill one : all) {
            int index = index(one.leads());
            while (fills[index] != null) {
                index = (index + 1) & (fills.length - 1);
            }
            fills[index] = one;
        }
    }

    private int index(long leads) {
        return (int) ((leads * GOLDEN) >>> (Long.SIZE - bits));
    }

    /// That for leads of a kind; `leads` must be one of them.
    Fill of(long leads) {
        int index = index(leads);
        while (fills[index].leads() != leads) {
            index = (index + 1) & (fills.length - 1);
        }
        return fills[index];
    }
}
