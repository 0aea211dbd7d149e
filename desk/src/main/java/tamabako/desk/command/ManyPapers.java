package tamabako.desk.command;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tamabako.problems.Problem;
import tamabako.problems.setting.FormsMade;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperForms;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;

/// Makes papers by the thousand, on all cores and in the order of their seeds.
///
/// @param forms how many equal forms each set has
/// @param count how many sets
/// @param ids where the names of papers come from; they must not be guessable
record ManyPapers(int forms, int count, Supplier<PaperId> ids) {

    /// Sets of forms that are made before progress is told.
    private static final int BATCH = 32;

    /// What came of it.
    sealed interface Outcome {

        /// Every set.
        record All(List<List<Paper>> sets) implements Outcome {
            public All {
                sets = List.copyOf(sets);
            }
        }

        record NotMade(PaperMade.Reason reason) implements Outcome {}
    }

    /// The sets of the seeds from `first` on.
    ///
    /// @param fresh gives a maker of forms, which is for one thread at a time
    Outcome make(Supplier<PaperForms> fresh, long first, List<Problem> leftOut, Progress progress) {
        ThreadLocal<PaperForms> maker = ThreadLocal.withInitial(fresh);
        List<List<Paper>> sets = new ArrayList<>();
        for (int done = 0; done < count; done += BATCH) {
            List<FormsMade> made =
                    IntStream.range(done, Math.min(count, done + BATCH))
                            .parallel()
                            .mapToObj(i -> maker.get().make(names(), first + i, leftOut))
                            .toList();
            for (FormsMade one : made) {
                switch (one) {
                    case FormsMade.Found found -> sets.add(found.papers());
                    case FormsMade.NotMade(PaperMade.Reason reason) -> {
                        return new Outcome.NotMade(reason);
                    }
                }
            }
            progress.at(sets.size() * forms);
        }
        progress.done(sets.size() * forms);
        return new Outcome.All(sets);
    }

    private List<PaperId> names() {
        return Stream.generate(ids).limit(forms).toList();
    }
}
