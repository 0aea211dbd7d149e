package tamabako.voice.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tamabako.voice.clip.Clips;
import tamabako.voice.clip.Piece;
import tamabako.voice.script.CallLine;
import tamabako.voice.script.CallScript;

/// The sound of a call: its times, and, when it is asked for, the speech.
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

    private final float[] opening;
    private final Pace pace;
    private final List<Joiner> rows;
    private final List<Integer> digits;

    private Sounding(float[] opening, Pace pace, List<Joiner> rows, List<Integer> digits) {
        this.opening = opening;
        this.pace = pace;
        this.rows = rows;
        this.digits = digits;
    }

    /// Prepares the call of `script` at that pace.
    public static Sounded of(CallScript script, Pace pace) {
        Optional<Clips> voice = Clips.find(script.language());
        if (voice.isEmpty()) {
            return new Sounded.NoVoice();
        }
        Optional<float[]> opening = alone(script.opening(), script.language());
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
        if (opening.isEmpty()) {
            return new Sounded.NoVoice();
        }
        Sounding sounding = new Sounding(opening.get(), pace, rows, digits);
        Optional<Sounded.TooFast> tooFast = sounding.tooFast();
        return tooFast.isPresent() ? tooFast.get() : new Sounded.Ready(sounding);
    }

    /// What a line sounds like alone, if there is a voice for it: an answer, or the caller's
    /// "right".
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

    private Optional<Sounded.TooFast> tooFast() {
        for (int row = 0; row < rows.size(); row++) {
            double least = rows.get(row).withoutRests() / MOST_HURRY;
            if (room(row) < least) {
                return Optional.of(new Sounded.TooFast(row + 1, slot(row), timeFor(least / RATE)));
            }
        }
        return Optional.empty();
    }

    /// When the rows begin.
    public CallTimes times() {
        List<Double> starts = new ArrayList<>();
        List<Double> hurry = new ArrayList<>();
        int at = samples(LEAD_IN) + opening.length + samples(AFTER_OPENING);
        for (int row = 0; row < rows.size(); row++) {
            starts.add(at / (double) RATE);
            hurry.add(Math.max(1, rows.get(row).withoutRests() / (double) room(row)));
            at += samples(slot(row));
        }
        double first = LEAD_IN + Loudness.onset(opening) / (double) RATE;
        return new CallTimes(first, starts, at / (double) RATE, hurry);
    }

    /// The call, spoken.
    public CallSound sound() {
        CallTimes times = times();
        List<float[]> lines = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        int length = samples(times.end());
        for (int row = 0; row < rows.size(); row++) {
            float[] speech = rows.get(row).fit(room(row));
            Loudness.even(speech);
            Loudness.clear(speech);
            lines.add(speech);
            places.add(samples(times.rows().get(row)) - Loudness.onset(speech));
            length = Math.max(length, places.get(row) + speech.length);
        }
        float[] samples = new float[length + samples(LEAD_IN)];
        add(samples, samples(LEAD_IN), opening);
        List<Double> ends = new ArrayList<>();
        for (int row = 0; row < lines.size(); row++) {
            add(samples, places.get(row), lines.get(row));
            ends.add((places.get(row) + lines.get(row).length) / (double) RATE);
        }
        return new CallSound(samples, times, ends);
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
