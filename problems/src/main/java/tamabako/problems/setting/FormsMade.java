package tamabako.problems.setting;

import java.util.List;

/// What came of asking for equal forms.
public sealed interface FormsMade {

    /// The forms, numbered from 1, and what each asks of a pupil; the same maker, seed and sums to
    /// leave out make their problems again.
    record Found(List<Paper> papers, FormReport report, long seed) implements FormsMade {
        public Found {
            papers = List.copyOf(papers);
        }
    }

    /// There are no such papers, or none were found.
    record NotMade(PaperMade.Reason reason) implements FormsMade {}
}
