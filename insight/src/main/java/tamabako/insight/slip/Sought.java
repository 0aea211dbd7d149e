package tamabako.insight.slip;

/// A difference from the right answer whose slips are looked for: `lead` times `10^place`, in units
/// of the last place.
///
/// A slip of the hand, or a digit misread, changes one rod, so it makes a difference with a single
/// figure other than 0, and on one place only; two digits swapped, or a digit on the rod beside its
/// own, make nine times a figure there.
///
/// @param tenths the difference in tenths of the last place, not 0
/// @param place how many zeros the units end with; 0 where `tenths` are no whole units
/// @param lead the units without them; 0 where `tenths` are no whole units
record Sought(long tenths, int place, long lead) {

    private static final int SWAPPED = 9;

    static Sought of(long tenths) {
        if (tenths % 10 != 0) {
            return new Sought(tenths, 0, 0);
        }
        long lead = tenths / 10;
        int place = 0;
        while (lead % 10 == 0) {
            lead /= 10;
            place++;
        }
        return new Sought(tenths, place, lead);
    }

    /// Whether the change of one digit makes the difference: `lead` of them at `place`.
    boolean isOfOneDigit() {
        return lead != 0 && lead >= -9 && lead <= 9;
    }

    /// Whether a digit that moves by one place makes the difference, or two that change places.
    boolean isNinefold() {
        return lead != 0 && lead % SWAPPED == 0 && lead >= -81 && lead <= 81;
    }

    /// The difference in units; 0 where it is no whole number of them.
    long units() {
        return lead * Tens.power(place);
    }
}
