package tamabako.voice.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.voice.clip.Clips;
import tamabako.voice.clip.Piece;
import tamabako.voice.script.CallLine;
import tamabako.voice.script.CallScript;

/// Makes the sound of a call.
public final class Sounding {

    /// The most that speech is hurried.
    public static final double MOST_HURRY = 3;

    /// Silence before the opening, in seconds.
    private static final double LEAD_IN = 0.3;

    /// From the end of the opening to the first row.
    private static final double AFTER_OPENING = 0.7;

    /// Between two rows the voice is silent for this, or for a tenth of the time of the row.
    private static final double BREAK = 0.15;

    private static final int RATE = Clips.RATE;

    private final Pace pace;
    private final List<Joiner> rows;
    private final List<Integer> digits;

    private Sounding(Pace pace, List<Joiner> rows, List<Integer> digits) {
        this.pace = pace;
        this.rows = rows;
        this.digits = digits;
    }

    /// The call of `script` at that pace.
    public static Sounded of(CallScript script, Pace pace) {
        Optional<Clips> voice = Clips.find(script.language());
        if (voice.isEmpty()) {
            return new Sounded.NoVoice();
        }
        Optional<List<Piece>> opening = voice.get().say(script.opening().words());
        List<Joiner> rows = new ArrayList<>();
        List<Integer> digits = new ArrayList<>();
        for (CallLine row : script.rows()) {
            Optional<List<Piece>> said = voice.get().say(row.words());
            if (said.isEmpty()) {
                return new Sounded.NoVoice();
            }
            rows.add(new Joiner(said.get()));
            digits.add((int) row.shown().chars().filter(Character::isDigit).count());
        }
        return opening.isEmpty()
                ? new Sounded.NoVoice()
                : new Sounding(pace, rows, digits).sound(new Joiner(opening.get()));
    }

    /// What a line sounds like alone, if there is a voice for it: an answer, or the caller's "right".
    public static Optional<float[]> alone(CallLine line, Locale language) {
        return Clips.find(language)
                .filter(_ -> !line.words().isEmpty())
                .flatMap(voice -> voice.say(line.words()))
                .map(pieces -> {
                    Joiner joiner = new Joiner(pieces);
                    float[] speech = joiner.fit(joiner.natural());
                    Loudness.even(speech);
                    return speech;
                });
    }

    private Sounded sound(Joiner opening) {
        for (int row = 0; row < rows.size(); row++) {
            double least = rows.get(row).withoutRests() / MOST_HURRY;
            if (room(row) < least) {
                return new Sounded.TooFast(row + 1, slot(row), timeFor(least / RATE));
            }
        }
        float[] first = opening.fit(opening.natural());
        Loudness.even(first);
        int start = samples(LEAD_IN) + first.length + samples(AFTER_OPENING);
        List<float[]> lines = new ArrayList<>();
        List<Integer> starts = new ArrayList<>();
        List<Double> hurry = new ArrayList<>();
        int slotStart = start;
        for (int row = 0; row < rows.size(); row++) {
            Joiner joiner = rows.get(row);
            float[] speech = joiner.fit(room(row));
            Loudness.even(speech);
            Loudness.clear(speech);
            lines.add(speech);
            starts.add(slotStart);
            hurry.add(Math.max(1, joiner.withoutRests() / (double) room(row)));
            slotStart += samples(slot(row));
        }
        return new Sounded.Ready(mix(first, lines, starts, slotStart, hurry));
    }

    private CallSound mix(
            float[] opening,
            List<float[]> lines,
            List<Integer> starts,
            int end,
            List<Double> hurry) {
        int length = end;
        List<Integer> places = new ArrayList<>();
        for (int row = 0; row < lines.size(); row++) {
            places.add(starts.get(row) - Loudness.onset(lines.get(row)));
            length = Math.max(length, places.get(row) + lines.get(row).length);
        }
        float[] samples = new float[length + samples(LEAD_IN)];
        add(samples, samples(LEAD_IN), opening);
        List<Double> ends = new ArrayList<>();
        for (int row = 0; row < lines.size(); row++) {
            add(samples, places.get(row), lines.get(row));
            ends.add((places.get(row) + lines.get(row).length) / (double) RATE);
        }
        return new CallSound(
                samples,
                LEAD_IN + Loudness.onset(opening) / (double) RATE,
                starts.stream().map(at -> at / (double) RATE).toList(),
                ends,
                end / (double) RATE,
                hurry);
    }

    private static void add(float[] samples, int from, float[] line) {
        for (int i = 0; i < line.length; i++) {
            double mixed = samples[from + i] + line[i];
            samples[from + i] = (float) Math.clamp(mixed, -Loudness.PEAK, Loudness.PEAK);
        }
    }

    private double slot(int row) {
        return pace.slot(digits.get(row), rows.get(row).natural() / (double) RATE);
    }

    /// The most samples that the speech of a row may have.
    private int room(int row) {
        return pace instanceof Pace.Unhurried
                ? rows.get(row).natural()
                : samples(slot(row) - Math.min(BREAK, slot(row) / 10));
    }

    private static double timeFor(double spoken) {
        return spoken < 9 * BREAK ? spoken / 0.9 : spoken + BREAK;
    }

    private static int samples(double seconds) {
        return (int) Math.round(seconds * RATE);
    }
}
