package tamabako.voice.clip;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import tamabako.voice.number.NumberWords;

/// The clips of one voice.
public final class Clips {

    /// Samples a second.
    public static final int RATE = 16_000;

    /// Samples at either end of a clip in which it crosses over into its neighbours: 6 ms.
    public static final int MARGIN = 96;

    /// How long a voice rests at a breath, in seconds.
    static final double BREATH = 0.18;

    /// How long it rests behind the name of a great power, in seconds.
    static final double AFTER_SCALE = 0.06;

    private static final int MOST_WORDS = 3;
    private static final Map<String, Optional<Clips>> KNOWN = new ConcurrentHashMap<>();
    private static final Set<String> SCALES =
            Set.of("thousand", "million", "billion", "trillion", "quadrillion", "まん", "おく", "ちょう");

    private final Map<String, Piece.Spoken> clips;
    private final Set<String> closing;

    private Clips(Map<String, Piece.Spoken> clips, Set<String> closing) {
        this.clips = Map.copyOf(clips);
        this.closing = Set.copyOf(closing);
    }

    /// The voice of that language, if there is one; the country does not count.
    public static Optional<Clips> find(Locale language) {
        return KNOWN.computeIfAbsent(language.getLanguage(), Clips::read);
    }

    /// The pieces that say `words`.
    ///
    /// @return nothing where the voice lacks a word
    public Optional<List<Piece>> say(List<String> words) {
        List<Piece> pieces = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            if (words.get(at).equals(NumberWords.BREATH)) {
                pieces.add(new Piece.Rest(BREATH));
                at++;
                continue;
            }
            int taken = longest(words, at);
            if (taken == 0) {
                return Optional.empty();
            }
            pieces.add(clip(words, at, taken).orElseThrow());
            at += taken;
            boolean isMid = at < words.size() && !ends(words, at);
            if (isMid && SCALES.contains(words.get(at - 1))) {
                pieces.add(new Piece.Rest(AFTER_SCALE));
            }
        }
        return Optional.of(pieces);
    }

    private int longest(List<String> words, int at) {
        for (int length = Math.min(MOST_WORDS, words.size() - at); length > 0; length--) {
            if (clip(words, at, length).isPresent()) {
                return length;
            }
        }
        return 0;
    }

    /// The clip of those words in the form that their place asks for, else in the other form.
    private Optional<Piece.Spoken> clip(List<String> words, int at, int length) {
        String said = String.join(" ", words.subList(at, at + length));
        boolean isLast = ends(words, at + length);
        return Optional.ofNullable(clips.get((isLast ? "last\t" : "mid\t") + said))
                .or(() -> Optional.ofNullable(clips.get((isLast ? "mid\t" : "last\t") + said)));
    }

    /// Whether what comes at `at` ends a number: nothing, a breath, a unit or a scale.
    private boolean ends(List<String> words, int at) {
        return at >= words.size()
                || words.get(at).equals(NumberWords.BREATH)
                || closing.contains(words.get(at));
    }

    private static Optional<Clips> read(String language) {
        Optional<byte[]> index = file(language + ".clips");
        if (index.isEmpty()) {
            return Optional.empty();
        }
        byte[] codes = file(language + ".ulaw").orElseThrow();
        Map<String, Piece.Spoken> clips = new HashMap<>();
        Set<String> closing = new HashSet<>();
        for (String line : new String(index.get(), StandardCharsets.UTF_8).lines().toList()) {
            String[] cells = line.split("\t", -1);
            if (cells[0].equals("closing")) {
                closing.addAll(List.of(cells[1].split(" ", -1)));
            } else if (!line.startsWith("#")) {
                int first = Integer.parseInt(cells[2]);
                int length = Integer.parseInt(cells[3]);
                clips.put(
                        cells[0] + "\t" + cells[1],
                        new Piece.Spoken(Mulaw.samples(codes, first, length)));
            }
        }
        return Optional.of(new Clips(clips, closing));
    }

    private static Optional<byte[]> file(String name) {
        try (InputStream file = Clips.class.getResourceAsStream(name)) {
            return file == null ? Optional.empty() : Optional.of(file.readAllBytes());
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read the voice " + name + ".", failed);
        }
    }
}
