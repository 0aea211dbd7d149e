package tamabako.desk.sheet;

import java.util.function.LongSupplier;
import tamabako.desk.web.Fields;

/// From what chance the problems of a page come: the same address shows the same problems.
///
/// @param seed short enough to be read out
/// @param swaps the problems that were exchanged
record Drawn(long seed, Swaps swaps) {

    private static final long MOST_SEED = 999_999;

    /// What stands in the address; a fresh seed where others are asked for, or none stands there.
    static Drawn of(Fields fields, LongSupplier seeds) {
        String written = fields.text("seed");
        if (!written.matches("\\d{1,6}") || fields.has("other")) {
            return new Drawn(Math.floorMod(seeds.getAsLong(), MOST_SEED) + 1, Swaps.NONE);
        }
        Swaps swaps = Swaps.parse(fields.text("swaps"));
        String another = fields.text("another");
        return new Drawn(
                Long.parseLong(written),
                another.matches("\\d{1,3}") ? swaps.plus(Integer.parseInt(another)) : swaps);
    }
}
