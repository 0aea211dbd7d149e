package tamabako.desk.room;

import java.util.Locale;

/// How the numbers of a call or a showing reach a pupil.
public enum Way {
    /// As they reach the class.
    CLASS,
    /// Spoken on the pupil's own tablet, where the class sees them.
    SPOKEN,
    /// Written on the pupil's own tablet once they were said, where the class hears them.
    CAPTIONS;

    /// The word for it in forms and texts.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
