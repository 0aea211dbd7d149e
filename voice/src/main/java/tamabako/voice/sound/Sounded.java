package tamabako.voice.sound;

/// What came of asking for the sound of a call.
public sealed interface Sounded {

    /// It can be spoken: `sounding` knows the times, and speaks when it is asked.
    record Ready(Sounding sounding) implements Sounded {}

    /// A row cannot be spoken in its time, not even hurried.
    ///
    /// @param row the row, from 1
    /// @param seconds its time
    /// @param least the least time that it needs, in seconds
    record TooFast(int row, double seconds, double least) implements Sounded {}

    /// There is no voice for the language, or it lacks a word.
    record NoVoice() implements Sounded {}
}
