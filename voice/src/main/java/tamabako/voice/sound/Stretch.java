package tamabako.voice.sound;

/// Makes speech shorter or longer without changing its pitch, to an exact length.
///
/// Overlapping windows are laid out at the new distance; each is taken from near its place in the
/// old speech, where it goes on most like the window before it (WSOLA: Verhelst and Roelands, "An
/// overlap-add technique based on waveform similarity", ICASSP 1993).
final class Stretch {

    /// 25 ms at 16 kHz.
    private static final int WINDOW = 400;

    private static final int HOP = WINDOW / 2;

    /// How far a window may be moved to fit, 8 ms.
    private static final int REACH = 128;

    private static final float[] HANN = hann();

    private Stretch() {}

    /// `speech` with exactly `length` samples.
    static float[] to(int length, float[] speech) {
        float[] stretched = new float[length];
        double rate = speech.length / (double) length;
        int previous = -HOP;
        for (int place = -HOP; place < length; place += HOP) {
            int wanted = (int) Math.round((place + HOP) * rate) - HOP;
            int from = place == -HOP ? wanted : best(speech, wanted, previous + HOP);
            for (int i = 0; i < WINDOW; i++) {
                int at = place + i;
                if (at >= 0 && at < length) {
                    stretched[at] += HANN[i] * sample(speech, from + i);
                }
            }
            previous = from;
        }
        return stretched;
    }

    /// The place near `wanted` whose window is most like the one at `natural`, where the speech
    /// would go on by itself.
    private static int best(float[] speech, int wanted, int natural) {
        int best = wanted;
        double most = Double.NEGATIVE_INFINITY;
        for (int from = wanted - REACH; from <= wanted + REACH; from++) {
            double likeness = likeness(speech, from, natural);
            if (likeness > most) {
                most = likeness;
                best = from;
            }
        }
        return best;
    }

    private static double likeness(float[] speech, int from, int natural) {
        double product = 0;
        double energy = 1e-9;
        for (int i = 0; i < WINDOW; i += 2) {
            float there = sample(speech, from + i);
            product += there * sample(speech, natural + i);
            energy += there * there;
        }
        return product / Math.sqrt(energy);
    }

    private static float sample(float[] speech, int at) {
        return at >= 0 && at < speech.length ? speech[at] : 0;
    }

    private static float[] hann() {
        float[] window = new float[WINDOW];
        for (int i = 0; i < WINDOW; i++) {
            window[i] = (float) ((1 - Math.cos(2 * Math.PI * (i + 0.5) / WINDOW)) / 2);
        }
        return window;
    }
}
