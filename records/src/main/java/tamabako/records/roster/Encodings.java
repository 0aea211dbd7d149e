package tamabako.records.roster;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/// Finds out in which encoding a text was saved: UTF-8 or UTF-16 with their marks, UTF-8 without,
/// and Shift_JIS as Japanese spreadsheets write it (the code page 932).
final class Encodings {

    /// A text and how it was saved.
    record Decoded(Read.Kind kind, String text) {}

    @SuppressWarnings("ArrayRecordComponent") // constants, never compared
    private record Try(Read.Kind kind, Charset charset, byte[] mark) {}

    private static final List<Try> TRIES =
            List.of(
                    new Try(
                            Read.Kind.CSV_UTF8,
                            StandardCharsets.UTF_8,
                            new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}),
                    new Try(
                            Read.Kind.CSV_UTF16,
                            StandardCharsets.UTF_16LE,
                            new byte[] {(byte) 0xFF, (byte) 0xFE}),
                    new Try(
                            Read.Kind.CSV_UTF16,
                            StandardCharsets.UTF_16BE,
                            new byte[] {(byte) 0xFE, (byte) 0xFF}),
                    new Try(Read.Kind.CSV_UTF8, StandardCharsets.UTF_8, new byte[0]),
                    new Try(Read.Kind.CSV_SHIFT_JIS, Charset.forName("windows-31j"), new byte[0]));

    private Encodings() {}

    static Optional<Decoded> decode(byte[] bytes) {
        for (Try one : TRIES) {
            int mark = one.mark().length;
            boolean isMarked =
                    bytes.length >= mark
                            && ByteBuffer.wrap(bytes, 0, mark).equals(ByteBuffer.wrap(one.mark()));
            if (isMarked) {
                Optional<String> text = strictly(bytes, mark, one.charset());
                if (text.isPresent()) {
                    return Optional.of(new Decoded(one.kind(), text.get()));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> strictly(byte[] bytes, int from, Charset charset) {
        try {
            return Optional.of(
                    charset.newDecoder()
                            .onMalformedInput(CodingErrorAction.REPORT)
                            .onUnmappableCharacter(CodingErrorAction.REPORT)
                            .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                            .toString());
        } catch (CharacterCodingException other) {
            return Optional.empty();
        }
    }
}
