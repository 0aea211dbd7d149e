package tamabako.voice.sound;

import java.util.List;

/// When the rows of a call begin, known before it is spoken.
///
/// @param opening when the opening begins, in seconds from the start of the sound
/// @param rows when each row begins
/// @param end when the slot of the last row is over
/// @param hurry how much faster than natural each row is spoken; 1 for not at all
public record CallTimes(double opening, List<Double> rows, double end, List<Double> hurry) {

    public CallTimes {
        rows = List.copyOf(rows);
        hurry = List.copyOf(hurry);
    }

    /// The greatest hurry of any row.
    public double greatestHurry() {
        return hurry.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    }
}
