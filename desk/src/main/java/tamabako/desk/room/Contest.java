package tamabako.desk.room;

import java.util.Locale;

/// How pupils drop out of a round whose problems come one after another.
public enum Contest {
    /// Not at all.
    NONE,
    /// Whoever is wrong, until one is left.
    STANDING,
    /// Whoever is wrong; those who drop out at the same problem share the places.
    BEST;

    /// As it stands in forms and addresses.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /// The one of that word.
    public static Contest of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
