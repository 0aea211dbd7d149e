package tamabako.voice.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/// Measures sound in the bytes of a WAV file, apart from the code that made it.
final class Heard {

    private static final int HEADER = 44;
    private static final double RATE = 16_000;

    private final double[] samples;

    Heard(byte[] wave) {
        ByteBuffer data = ByteBuffer.wrap(wave).order(ByteOrder.LITTLE_ENDIAN);
        samples = new double[(wave.length - HEADER) / 2];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = data.getShort(HEADER + 2 * i) / 32768.0;
        }
    }

    double peak() {
        double peak = 0;
        for (double sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return peak;
    }

    /// The level of what is spoken from `from` to `to` seconds, in decibels below full scale:
    /// frames of 20 ms, those that are 30 dB quieter than the loudest left out.
    double level(double from, double to) {
        int frame = 320;
        double loudest = 0;
        for (int at = at(from); at + frame <= at(to); at += frame) {
            loudest = Math.max(loudest, power(at, frame));
        }
        double sum = 0;
        int count = 0;
        for (int at = at(from); at + frame <= at(to); at += frame) {
            double power = power(at, frame);
            if (power > loudest / 1000) {
                sum += power;
                count++;
            }
        }
        return 10 * Math.log10(sum / count);
    }

    /// When energy sets in between `from` and `to`: the middle of the first 5 ms that come within
    /// 25 dB of `level`, looked at millisecond by millisecond.
    double onset(double from, double to, double level) {
        int window = 80;
        double wanted = Math.pow(10, (level - 25) / 10);
        for (int at = at(from); at + window <= at(to); at += 16) {
            if (power(at, window) >= wanted) {
                return (at + window / 2) / RATE;
            }
        }
        return Double.NaN;
    }

    private double power(int from, int length) {
        double sum = 0;
        for (int i = Math.max(0, from); i < from + length && i < samples.length; i++) {
            sum += samples[i] * samples[i];
        }
        return sum / length;
    }

    private static int at(double seconds) {
        return (int) Math.round(seconds * RATE);
    }
}
