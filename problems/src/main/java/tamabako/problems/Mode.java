package tamabako.problems;

import java.util.Locale;

/// How a problem reaches the pupil and is worked.
public enum Mode {
    /// On the frame, from paper.
    FRAME,
    /// In the head, on an imagined frame (anzan).
    MENTAL,
    /// Called aloud (yomiagezan).
    CALLED;

    /// The word used in files and commands.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
