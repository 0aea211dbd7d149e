package tamabako.desk.room;

import java.util.OptionalLong;

/// An answer of a seat as it counts now.
///
/// @param written as the pupil wrote it; blank where nothing was written yet
/// @param mark the word of its mark, such as `right` or `wrong-form`
/// @param took how long the seat was at it in all, in milliseconds by the desk's clock; unknown
///   where the answer waited on a tablet without a network
public record Answered(String written, String mark, OptionalLong took) {

    /// No answer yet.
    public static final Answered NOTHING = new Answered("", "empty", OptionalLong.empty());

    /// The problem was shown badly on this seat's tablet: nothing can be written.
    public static final Answered VOID = new Answered("", "void", OptionalLong.empty());

    /// Whether it does not count, since the problem was shown badly.
    public boolean isVoid() {
        return equals(VOID);
    }

    /// Whether something was written.
    public boolean isThere() {
        return !written.isBlank();
    }

    /// Whether it counts.
    public boolean isRight() {
        return mark.equals("right");
    }
}
