package tamabako.problems.marking;

/// How strictly the form of an answer is looked at.
///
/// @param commas whether a number of more than three whole digits needs its commas; commas that are
///   there must stand right in any case
public record WritingRules(boolean commas) {

    /// As the abacus proficiency test marks. Source: JCCI's rules for writing answers.
    public static final WritingRules STRICT = new WritingRules(true);

    /// The same without the need for commas, for practice on a screen and for young pupils. Common
    /// practice, no published source.
    public static final WritingRules EASY = new WritingRules(false);
}
