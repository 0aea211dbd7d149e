package tamabako.voice.clip;

/// Eight bits for a sample, by ITU-T G.711.
final class Mulaw {

    private static final float[] SAMPLES = new float[256];

    static {
        for (int code = 0; code < 256; code++) {
            int bits = ~code & 0xFF;
            int magnitude = ((((bits & 0x0F) << 3) + 132) << ((bits >> 4) & 7)) - 132;
            SAMPLES[code] = ((bits & 0x80) == 0 ? magnitude : -magnitude) / 32768f;
        }
    }

    private Mulaw() {}

    /// The samples of `length` codes from `first` on, from -1 to 1.
    static float[] samples(byte[] codes, int first, int length) {
        float[] samples = new float[length];
        for (int i = 0; i < length; i++) {
            samples[i] = SAMPLES[codes[first + i] & 0xFF];
        }
        return samples;
    }
}
