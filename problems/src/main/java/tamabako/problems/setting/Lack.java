package tamabako.problems.setting;

import tamabako.problems.making.Made;

/// What a batch lacks, before it is known of which section it is.
sealed interface Lack {

    /// No such problems can be made.
    record NoSuch(Made.Reason why) implements Lack {}

    /// Too few of them are new.
    record TooFewNew(int found, int count) implements Lack {}

    /// The same as a reason for a person.
    default PaperMade.Reason in(String section) {
        return switch (this) {
            case NoSuch(Made.Reason why) -> new PaperMade.Reason.NoSuchProblems(section, why);
            case TooFewNew(int found, int count) ->
                    new PaperMade.Reason.TooFewNew(section, found, count);
        };
    }
}
