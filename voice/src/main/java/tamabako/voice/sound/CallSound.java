package tamabako.voice.sound;

import java.util.List;

/// A call as sound, with the times of its rows.
///
/// @param samples 16 kHz, one channel, from -1 to 1
/// @param opening when the opening begins, in seconds from the start
/// @param rows when each row begins
/// @param ends when the voice has done with each row
/// @param end when the slot of the last row is over
/// @param hurry how much faster than natural each row is spoken; 1 for not at all
@SuppressWarnings("ArrayRecordComponent") // handed on as it is, never compared
public record CallSound(
        float[] samples,
        double opening,
        List<Double> rows,
        List<Double> ends,
        double end,
        List<Double> hurry) {

    public CallSound {
        rows = List.copyOf(rows);
        ends = List.copyOf(ends);
        hurry = List.copyOf(hurry);
    }

    /// The greatest hurry of any row.
    public double greatestHurry() {
        return hurry.stream().mapToDouble(Double::doubleValue).max().orElse(1);
    }
}
