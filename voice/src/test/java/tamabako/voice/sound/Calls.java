package tamabako.voice.sound;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tamabako.problems.Column;
import tamabako.problems.Terms;
import tamabako.testkit.Draw;
import tamabako.voice.number.Wording;
import tamabako.voice.script.CallScript;
import tamabako.voice.script.CallWish;
import tamabako.voice.script.CallWords;
import tamabako.voice.script.Called;
import tamabako.voice.script.Caller;
import tamabako.voice.script.Unsayable;

/// Calls for the tests.
final class Calls {

    private Calls() {}

    /// So many rows of so many digits, every fourth of them a minus row where that is wanted.
    static List<BigDecimal> rows(long seed, int count, int least, int most, boolean minus) {
        Draw draw = new Draw(seed);
        List<BigDecimal> rows = new ArrayList<>();
        for (int row = 0; row < count; row++) {
            BigDecimal number = new BigDecimal(draw.whole(draw.between(least, most)));
            rows.add(minus && row % 4 == 3 ? number.negate() : number);
        }
        return rows;
    }

    static CallScript script(String language, Wording wording, List<BigDecimal> rows) {
        CallWords words = CallWords.find(Locale.forLanguageTag(language)).orElseThrow();
        Column column = new Column("1", rows, Terms.PLAIN);
        return switch (Caller.call(column, words, CallWish.USUAL.with(wording))) {
            case Called.Written(CallScript script) -> script;
            case Called.Refused(Unsayable reason) -> throw new AssertionError(reason);
        };
    }

    static CallSound sound(CallScript script, Pace pace) {
        return switch (Sounding.of(script, pace)) {
            case Sounded.Ready(Sounding sounding) -> sounding.sound();
            case Sounded.TooFast fast -> throw new AssertionError(fast);
            case Sounded.NoVoice none -> throw new AssertionError(none);
        };
    }
}
