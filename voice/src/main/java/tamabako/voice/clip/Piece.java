package tamabako.voice.clip;

/// A piece of a line as a voice has it.
public sealed interface Piece {

    /// Recorded words.
    ///
    /// @param samples 16 kHz, from -1 to 1, with [Clips#MARGIN] samples at either end that belong
    ///   to the words around
    @SuppressWarnings("ArrayRecordComponent") // shared by everyone who joins it, never changed
    record Spoken(float[] samples) implements Piece {}

    /// A rest, in seconds, which may be made shorter.
    record Rest(double seconds) implements Piece {}
}
