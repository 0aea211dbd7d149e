package tamabako.insight.slip;

import java.util.Arrays;

/// Slips that may happen to one digit or at one step, whatever the rod: worked out once, and then
/// set on one rod after another.
final class Options {

    private final long[] changes;
    private final long[] codes;
    private final double[] weights;
    private final int[] slots;
    private final double[] occasions;

    /// @param slips those on rod 0, with their changes in place of tenths, and without a packed
    ///   place
    Options(Events slips) {
        this.changes = new long[slips.size()];
        this.codes = new long[slips.size()];
        this.weights = new double[slips.size()];
        Arrays.setAll(changes, slips::tenths);
        Arrays.setAll(codes, slips::code);
        Arrays.setAll(weights, slips::weight);
        this.slots = Arrays.stream(codes).mapToInt(Slot::of).distinct().toArray();
        double[] sums = slips.occasions();
        this.occasions = Arrays.stream(slots).mapToDouble(slot -> sums[slot]).toArray();
    }

    /// Adds the occasions for them to those for each [Slot].
    void addOccasions(double[] all) {
        for (int i = 0; i < slots.length; i++) {
            all[slots[i]] += occasions[i];
        }
    }

    /// Adds them to `events`.
    ///
    /// @param unit what one of the digit is, minus where the digit is taken
    /// @param at the packed place of the digit
    void add(long unit, long at, Effect effect, Events events) {
        for (int i = 0; i < changes.length; i++) {
            events.add(effect.tenths(changes[i] * unit), codes[i] | at, weights[i]);
        }
    }
}
