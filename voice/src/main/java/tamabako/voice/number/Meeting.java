package tamabako.voice.number;

import java.util.Locale;

/// What the last word of a number meets, where that changes its sound.
public enum Meeting {
    /// Nothing that changes it.
    OPEN,
    /// A hard consonant, which cuts Japanese 1, 8 and 10 short: issento, hassento, jussento; itten,
    /// hatten, jutten.
    HARD;

    /// The word used in files.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
