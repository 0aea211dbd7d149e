package tamabako.records;

import java.time.Year;
import java.util.Optional;

/// What a teacher may write down about a pupil, all of it optional.
///
/// @param kana how the name is read; blank where it is not said
/// @param born the year of birth, no closer
/// @param grade the grade that the pupil holds or works for, in the teacher's words; may be blank
/// @param rosterId the number under which another program's roster lists the pupil; may be blank
public record About(String kana, Optional<Year> born, String grade, String rosterId) {

    /// Nothing at all.
    public static final About NOTHING = new About("", Optional.empty(), "", "");
}
