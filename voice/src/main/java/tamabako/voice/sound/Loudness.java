package tamabako.voice.sound;

/// How loud speech is, and where it begins.
final class Loudness {

    /// The level that every line is brought to: -20 dB below full scale, root mean square.
    static final double LEVEL = 0.1;

    /// No sample goes beyond this: -1 dB.
    static final double PEAK = 0.89;

    /// Frames of 20 ms that are 30 dB quieter than the loudest are no speech.
    private static final int FRAME = 320;

    private static final double SILENCE = 1e-3;

    /// Speech begins where 5 ms of it come within 25 dB of its level.
    private static final int ONSET = 80;

    private static final double BEGUN = 3.2e-3;

    /// How much of the sound before the onset is left: 5 dB less.
    private static final double BEFORE = 0.56;

    private Loudness() {}

    /// Brings speech to the one level, or as near to it as its peak allows.
    static void even(float[] speech) {
        double level = Math.sqrt(power(speech));
        double peak = 1e-9;
        for (float sample : speech) {
            peak = Math.max(peak, Math.abs(sample));
        }
        double gain = level == 0 ? 1 : Math.min(LEVEL / level, PEAK / peak);
        for (int i = 0; i < speech.length; i++) {
            speech[i] *= (float) gain;
        }
    }

    /// The first sample of what is heard.
    static int onset(float[] speech) {
        double wanted = power(speech) * BEGUN * ONSET;
        double energy = 0;
        for (int i = 0; i < speech.length; i++) {
            energy += speech[i] * speech[i];
            energy -= i < ONSET ? 0 : speech[i - ONSET] * speech[i - ONSET];
            if (energy >= wanted && energy > 0) {
                return Math.max(0, i - ONSET / 2);
            }
        }
        return 0;
    }

    /// Makes what comes before the onset softer, so that a breath that is nearly as loud as the
    /// bound cannot be taken for the onset.
    static void clear(float[] speech) {
        int onset = onset(speech);
        for (int i = 0; i < onset; i++) {
            double ramp = Math.clamp(1 - (onset - i) / (double) ONSET, 0, 1);
            speech[i] *= (float) (BEFORE + (1 - BEFORE) * ramp);
        }
    }

    /// The mean power of the frames that hold speech.
    private static double power(float[] speech) {
        int frames = speech.length / FRAME + 1;
        double[] powers = new double[frames];
        double loudest = 0;
        for (int i = 0; i < speech.length; i++) {
            powers[i / FRAME] += speech[i] * speech[i] / FRAME;
        }
        for (double power : powers) {
            loudest = Math.max(loudest, power);
        }
        double sum = 0;
        int spoken = 0;
        for (double power : powers) {
            if (power > 0 && power >= loudest * SILENCE) {
                sum += power;
                spoken++;
            }
        }
        return spoken == 0 ? 0 : sum / spoken;
    }
}
