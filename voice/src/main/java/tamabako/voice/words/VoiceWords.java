package tamabako.voice.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import tamabako.voice.script.Unsayable;
import tamabako.voice.sound.CallTimes;
import tamabako.voice.sound.Sounded;
import tamabako.voice.sound.Understanding;

/// Says the reasons of this module in one language: what, where, and how to mend it.
public final class VoiceWords {

    private final ResourceBundle texts;

    private VoiceWords(ResourceBundle texts) {
        this.texts = texts;
    }

    /// The words of `language`, or English where it has no file.
    public static VoiceWords of(Locale language) {
        ResourceBundle.Control noFallback =
                ResourceBundle.Control.getNoFallbackControl(
                        ResourceBundle.Control.FORMAT_PROPERTIES);
        Locale known = language.getLanguage().equals("ja") ? Locale.JAPANESE : Locale.ENGLISH;
        return new VoiceWords(
                ResourceBundle.getBundle("tamabako.voice.words.words", known, noFallback));
    }

    /// Why a column cannot be called.
    public String say(Unsayable reason) {
        return switch (reason) {
            case Unsayable.TooLong(int row, int digits, int most) ->
                    say("too-long", row, digits, most);
            case Unsayable.TooFine(int row, String unit, int places) ->
                    say("too-fine", row, unit, places);
            case Unsayable.UnknownUnit(String unit) -> say("unknown-unit", unit);
            case Unsayable.NoSuchWording(var wording) -> say("no-such-wording", wording.word());
        };
    }

    /// What is likely to be understood of a call in the language `called` with those times.
    public String say(Locale called, CallTimes times) {
        double share = Understanding.share(called, times.greatestHurry());
        return switch (Understanding.of(share)) {
            case CLEAR -> say("clear");
            case HARD -> say("hard", Math.round(share * 100));
            case LOST -> say("lost", Math.round(share * 100));
        };
    }

    /// Why there is no sound at that pace.
    public String say(Sounded.TooFast reason) {
        return say(
                "too-fast",
                reason.row(),
                tenths(reason.seconds(), RoundingMode.HALF_UP),
                tenths(reason.least(), RoundingMode.UP));
    }

    /// There is no voice for the language.
    public String noVoice() {
        return say("no-voice");
    }

    private static String tenths(double seconds, RoundingMode rounding) {
        return BigDecimal.valueOf(seconds).setScale(1, rounding).toPlainString();
    }

    private String say(String key, Object... values) {
        return new MessageFormat(texts.getString(key), Locale.ROOT).format(values);
    }
}
