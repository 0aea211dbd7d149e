package tamabako.voice.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import tamabako.voice.clip.Clips;

/// Sound as a WAV file: 16 kHz, 16 bit, one channel.
public final class Wave {

    private static final int HEADER = 44;

    private Wave() {}

    /// The bytes of the file.
    ///
    /// @param samples from -1 to 1
    public static byte[] of(float[] samples) {
        int data = samples.length * 2;
        ByteBuffer file = ByteBuffer.allocate(HEADER + data).order(ByteOrder.LITTLE_ENDIAN);
        file.put(word("RIFF")).putInt(HEADER - 8 + data).put(word("WAVE"));
        file.put(word("fmt ")).putInt(16).putShort((short) 1).putShort((short) 1);
        file.putInt(Clips.RATE).putInt(Clips.RATE * 2).putShort((short) 2).putShort((short) 16);
        file.put(word("data")).putInt(data);
        for (float sample : samples) {
            file.putShort((short) Math.round(Math.clamp(sample, -1f, 1f) * 32767));
        }
        return file.array();
    }

    private static byte[] word(String word) {
        return word.getBytes(StandardCharsets.US_ASCII);
    }
}
