package tamabako.desk.room.page;

import java.util.Locale;
import java.util.Optional;
import tamabako.problems.Column;
import tamabako.voice.script.CallWish;
import tamabako.voice.script.CallWords;
import tamabako.voice.script.Called;
import tamabako.voice.script.Caller;
import tamabako.voice.sound.Pace;
import tamabako.voice.sound.Sounded;
import tamabako.voice.sound.Sounding;

/// The numbers of a showing as a voice says them, for a pupil who hears them on the own tablet.
final class Spoken {

    /// From one number to the next where the pace of the showing is too fast for a voice, in
    /// seconds.
    private static final double BREATH = 0.5;

    /// No voice says a number in less, in seconds.
    private static final double LEAST = 0.3;

    private static final CallWish PLAIN = CallWish.USUAL.withUnit("none");

    private Spoken() {}

    /// At the pace of the showing where the voice has the time, else number by number without
    /// hurry; empty where a number cannot be said.
    ///
    /// @param period of the showing, in milliseconds
    static Optional<Sounding> of(Column column, double period, Locale language) {
        return sounding(column, new Pace.SecondsARow(Math.max(LEAST, period / 1_000)), language)
                .filter(sounding -> sounding.times().greatestHurry() <= 1)
                .or(() -> sounding(column, new Pace.Unhurried(BREATH), language));
    }

    private static Optional<Sounding> sounding(Column column, Pace pace, Locale language) {
        Optional<CallWords> words = CallWords.find(voice(language));
        if (words.isEmpty()) {
            return Optional.empty();
        }
        return Caller.call(column, words.get(), PLAIN) instanceof Called.Written(var script)
                        && Sounding.of(script, pace) instanceof Sounded.Ready(Sounding ready)
                ? Optional.of(ready)
                : Optional.empty();
    }

    private static Locale voice(Locale language) {
        return language.getLanguage().equals("ja") ? Locale.JAPANESE : Locale.US;
    }
}
