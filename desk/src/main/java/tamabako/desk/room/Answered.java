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

    /// Whether something was written.
    public boolean isThere() {
        return !written.isBlank();
    }

    /// Whether it counts.
    public boolean isRight() {
        return mark.equals("right");
    }
}
