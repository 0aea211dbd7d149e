package tamabako.voice.sound;

import java.util.List;

/// A call as sound.
///
/// @param samples 16 kHz, one channel, from -1 to 1
/// @param times when its rows begin
/// @param ends when the voice has done with each row, in seconds from the start
@SuppressWarnings("ArrayRecordComponent") // handed on as it is, never compared
public record CallSound(float[] samples, CallTimes times, List<Double> ends) {

    public CallSound {
        ends = List.copyOf(ends);
    }

    /// When each row begins.
    public List<Double> rows() {
        return times.rows();
    }
}
