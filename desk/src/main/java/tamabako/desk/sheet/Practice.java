package tamabako.desk.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import tamabako.desk.ladder.SectionProblems;
import tamabako.problems.Problem;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.Wish;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.words.Sayable;

/// What is asked for on the page "Make a sheet".
sealed interface Practice {

    /// What came of it.
    sealed interface Granted {
        /// The problems, numbered from 1.
        record Found(List<Problem> problems) implements Granted {}

        /// There are none, or none were found.
        ///
        /// @param nearest a wish close by that can be granted, where one is known
        record Refused(Sayable reason, Optional<Wish> nearest) implements Granted {}
    }

    /// The problems of that seed; none of them is one of `leftOut`.
    Granted make(long seed, List<Problem> leftOut);

    /// Problems to stand in the place of the one with that number; the first that can is taken.
    Granted other(int number, long seed, List<Problem> leftOut);

    /// So many problems that grant a wish.
    record OfWish(Wish wish, int count) implements Practice {

        @Override
        public Granted make(long seed, List<Problem> leftOut) {
            return make(count, seed, leftOut);
        }

        @Override
        public Granted other(int number, long seed, List<Problem> leftOut) {
            return make(1, seed, leftOut);
        }

        private Granted make(int many, long seed, List<Problem> leftOut) {
            Wish customary =
                    wish instanceof ColumnWish columns ? columns.withCustomsOfPractice() : wish;
            return switch (Maker.make(customary, many, seed, new HashSet<>(leftOut))) {
                case Made.Found(List<Problem> problems, _) -> new Granted.Found(problems);
                case Made.Impossible(_, Made.Reason reason, Optional<Wish> nearest) ->
                        new Granted.Refused(reason, nearest);
                case Made.NotFound(_, Made.Reason reason) ->
                        new Granted.Refused(reason, Optional.empty());
            };
        }
    }

    /// A section of a grade as its paper has it.
    record OfSection(String ladder, Grade grade, Section section) implements Practice {

        @Override
        public Granted make(long seed, List<Problem> leftOut) {
            return switch (SectionProblems.make(ladder, grade, section, seed, leftOut)) {
                case PaperMade.Found found -> new Granted.Found(found.paper().problems());
                case PaperMade.NotMade(PaperMade.Reason reason) ->
                        new Granted.Refused(reason, Optional.empty());
            };
        }

        /// The problem in the same place of another paper, so that what the table asks of its place
        /// stays true.
        @Override
        public Granted other(int number, long seed, List<Problem> leftOut) {
            return make(seed, leftOut) instanceof Granted.Found(List<Problem> problems)
                            && number <= problems.size()
                    ? new Granted.Found(List.of(problems.get(number - 1)))
                    : new Granted.Found(List.of());
        }

        /// Whether its numbers stand on a slip pad, which a sheet does not have.
        boolean hasPad() {
            return section.batches().stream()
                    .anyMatch(batch -> batch.format() instanceof Format.PadLines);
        }
    }

    /// The problems of a seed, those exchanged that the teacher did not want.
    default Granted make(long seed, Swaps swaps) {
        if (!(make(seed, List.of()) instanceof Granted.Found(List<Problem> made))) {
            return make(seed, List.of());
        }
        List<Problem> problems = new ArrayList<>(made);
        swaps.each((number, times) -> {
            for (int time = 1; time <= times && number <= problems.size(); time++) {
                exchange(problems, number, seed + 1_000_003L * number + 7_919L * time);
            }
        });
        return new Granted.Found(problems);
    }

    private void exchange(List<Problem> problems, int number, long seed) {
        if (other(number, seed, problems) instanceof Granted.Found(List<Problem> others)
                && !others.isEmpty()) {
            String id = problems.get(number - 1).id();
            problems.set(number - 1, others.getFirst().withId(id));
        }
    }
}
