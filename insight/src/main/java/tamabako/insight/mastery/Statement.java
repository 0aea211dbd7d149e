package tamabako.insight.mastery;

import java.util.Locale;

/// What may be said of a pupil's work.
public enum Statement {
    /// It goes wrong seldom enough, with nine chances in ten.
    MASTERED,
    /// It goes wrong too often, with nine chances in ten.
    NOT_YET,
    /// Neither can be said yet.
    NEEDS_EVIDENCE;

    /// How sure one must be to say something.
    public static final double SURE = 0.9;

    /// What may be said where it is good enough with chance `good`.
    ///
    /// @param enough whether there is as much evidence as is needed to say anything
    static Statement of(double good, boolean enough) {
        if (!enough) {
            return NEEDS_EVIDENCE;
        }
        return good >= SURE ? MASTERED : good <= 1 - SURE ? NOT_YET : NEEDS_EVIDENCE;
    }

    /// The word used in files, such as `not-yet`.
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
