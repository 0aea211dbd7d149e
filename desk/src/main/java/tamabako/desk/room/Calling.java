package tamabako.desk.room;

import java.util.List;
import java.util.Locale;
import tamabako.voice.script.CallWish;
import tamabako.voice.sound.Pace;

/// How the columns of a round are called.
///
/// @param language the caller's
/// @param wish the caller's wording
/// @param paces how fast, for each column
/// @param contest how pupils drop out
public record Calling(Locale language, CallWish wish, List<Pace> paces, Contest contest) {

    public Calling {
        paces = List.copyOf(paces);
    }
}
