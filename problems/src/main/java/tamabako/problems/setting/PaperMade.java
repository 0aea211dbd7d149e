package tamabako.problems.setting;

import tamabako.problems.making.Made;
import tamabako.problems.words.Sayable;

/// What came of asking for a paper.
public sealed interface PaperMade {

    /// The paper; the same maker, seed and sums to leave out make its problems again.
    record Found(Paper paper, long seed) implements PaperMade {}

    /// There is no such paper, or none was found.
    record NotMade(Reason reason) implements PaperMade {}

    /// Why a paper is not made.
    sealed interface Reason extends Sayable {

        @Override
        default String topic() {
            return "paper";
        }

        /// The problems of a section cannot be made.
        ///
        /// @param section the name the section goes by within its grade
        record NoSuchProblems(String section, Made.Reason why) implements Reason {}

        /// A section has not enough problems other than those to be left out.
        record TooFewNew(String section, int found, int count) implements Reason {}

        /// A section has problems for some forms, but not for as many as are asked for without a
        /// sum in two of them.
        ///
        /// @param made how many forms there are problems for, one at least
        record TooFewForms(String section, int made, int asked) implements Reason {}
    }
}
