package tamabako.voice.sound;

import java.util.List;
import tamabako.voice.clip.Clips;
import tamabako.voice.clip.Piece;

/// Joins clips into the speech of one line, and fits it into a given time.
final class Joiner {

    private static final int MARGIN = Clips.MARGIN;

    private final List<Piece> pieces;

    Joiner(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /// The length when nothing is hurried, in samples.
    int natural() {
        return length(1);
    }

    /// The length without any rest, in samples.
    int withoutRests() {
        return length(0);
    }

    /// The speech, at most `longest` samples long: rests are made shorter first, then all is spoken
    /// faster without change of pitch.
    float[] fit(int longest) {
        if (natural() <= longest) {
            return join(1);
        }
        int spoken = withoutRests();
        if (spoken <= longest) {
            double rests = (longest - spoken) / (double) (natural() - spoken);
            return join(rests);
        }
        return Stretch.to(longest, join(0));
    }

    /// Clips side by side share two margins; at a rest each fades out within its own.
    private int length(double rests) {
        int length = 0;
        boolean joins = false;
        for (Piece piece : pieces) {
            switch (piece) {
                case Piece.Spoken(float[] samples) -> {
                    length += samples.length - (joins ? 2 * MARGIN : 0);
                    joins = true;
                }
                case Piece.Rest(double seconds) -> {
                    int rest = (int) (seconds * rests * Clips.RATE);
                    length += rest;
                    joins = joins && rest == 0;
                }
            }
        }
        return length;
    }

    private float[] join(double rests) {
        float[] joined = new float[length(rests)];
        int end = 0;
        boolean joins = false;
        for (Piece piece : pieces) {
            switch (piece) {
                case Piece.Spoken(float[] samples) -> {
                    int start = joins ? end - 2 * MARGIN : end;
                    add(joined, start, samples);
                    end = start + samples.length;
                    joins = true;
                }
                case Piece.Rest(double seconds) -> {
                    int rest = (int) (seconds * rests * Clips.RATE);
                    end += rest;
                    joins = joins && rest == 0;
                }
            }
        }
        return joined;
    }

    /// Adds a clip that fades in and out within twice the margin; two faded ends add up to one.
    private static void add(float[] joined, int start, float[] clip) {
        int fade = 2 * MARGIN;
        for (int i = 0; i < clip.length; i++) {
            int edge = Math.min(i, clip.length - 1 - i);
            double gain = edge >= fade ? 1 : (1 - Math.cos(Math.PI * (edge + 0.5) / fade)) / 2;
            joined[start + i] += (float) (gain * clip[i]);
        }
    }
}
