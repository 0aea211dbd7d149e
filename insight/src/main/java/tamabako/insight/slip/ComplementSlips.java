package tamabako.insight.slip;

/// A total below zero, read wrong off the frame.
///
/// Read well, every rod is made up to nine and the last rod that has beads to ten; zeros after it
/// stay. Source: Heffelfinger and Flom, Abacus: Mystery of the Bead, negative numbers. Among the
/// misreadings are those that a teacher names for the frame 9,940 of 10,000, read -59, -50, -5 and
/// -6 instead of -60.
final class ComplementSlips {

    private final long lent;
    private final long debt;
    private final Events events;

    /// @param lent what is lent, a power of ten
    /// @param debt the total without its minus, above 0 and at most `lent`; the frame shows the
    ///   rest
    ComplementSlips(long lent, long debt, Events events) {
        this.lent = lent;
        this.debt = debt;
        this.events = events;
    }

    /// Adds the misreadings.
    void add() {
        long lastRod = 1;
        while (debt % (10 * lastRod) == 0) {
            lastRod *= 10;
        }
        int mark = events.mark();
        read(Way.COMPLEMENT_ALL_NINES, 1 - debt);
        read(Way.COMPLEMENT_ALL_TENS, -allTens());
        if (lastRod > 1) {
            read(Way.COMPLEMENT_LAST_NINE, lastRod - debt);
            read(Way.COMPLEMENT_LAST_NINE_ZEROS_LOST, 1 - debt / lastRod);
            read(Way.COMPLEMENT_ZEROS_LOST, -debt / lastRod);
        }
        read(Way.COMPLEMENT_NOT_TAKEN, debt - lent);
        read(Way.COMPLEMENT_NOT_TAKEN, lent - debt);
        read(Way.MINUS_NOT_WRITTEN, debt);
        events.share(mark, 1);
    }

    private void read(Way way, long total) {
        events.add(10 * (total + debt), Code.of(way, Code.answer()));
    }

    /// Each rod of the answer made up to ten by itself.
    private long allTens() {
        long read = 0;
        for (int place = 0; place < Tens.length(debt); place++) {
            int shown = Tens.digit(lent - debt, place);
            read += (10 - shown) % 10 * Tens.power(place);
        }
        return read;
    }
}
