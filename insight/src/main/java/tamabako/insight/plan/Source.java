package tamabako.insight.plan;

import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.Terms;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Section;
import tamabako.problems.making.Made;
import tamabako.problems.making.Maker;
import tamabako.problems.making.Wish;
import tamabako.problems.setting.Paper;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;

/// Where the problems of an exercise come from.
sealed interface Source {

    /// `count` problems from that seed, none of them one of `avoided`; fewer where no more are
    /// found.
    List<Problem> make(int count, long seed, Set<Problem> avoided);

    /// Problems as the papers of a grade have them in a section.
    ///
    /// How such papers are made is dear to find, and may take much room: it is kept as long as
    /// there is room, so that all pupils of a group get theirs by it. One thread at a time.
    final class OfSection implements Source {

        private final String ladder;
        private final Grade only;
        private SoftReference<PaperMaker> kept = new SoftReference<>(null);

        OfSection(String ladder, Grade grade, Section section) {
            this.ladder = ladder;
            this.only =
                    new Grade(
                            grade.id(),
                            grade.name(),
                            List.of(section),
                            grade.time(),
                            grade.pass(),
                            grade.numbering(),
                            grade.writing(),
                            Optional.empty(),
                            grade.cites());
        }

        @Override
        public synchronized List<Problem> make(int count, long seed, Set<Problem> avoided) {
            PaperMaker maker = maker();
            Set<Problem> not = new HashSet<>(avoided);
            List<Problem> made = new ArrayList<>();
            for (long i = 0; made.size() < count; i++) {
                if (!(maker.make(PaperId.draw(() -> 0), seed + i, not)
                        instanceof PaperMade.Found(Paper paper, _))) {
                    break;
                }
                made.addAll(paper.problems());
                not.addAll(paper.problems());
            }
            return spread(made, count);
        }

        private PaperMaker maker() {
            PaperMaker known = kept.get();
            if (known == null) {
                known = PaperMaker.of(ladder, only);
                kept = new SoftReference<>(known);
            }
            return known;
        }

        /// Problems from the whole of the section, not only from its beginning.
        private static List<Problem> spread(List<Problem> made, int count) {
            int most = Math.min(count, made.size());
            List<Problem> spread = new ArrayList<>();
            for (int i = 0; i < most; i++) {
                spread.add(made.get((int) ((i + 0.5) * made.size() / most)));
            }
            return spread;
        }
    }

    /// Problems made to a wish that may depend on their number, under the terms of a section.
    record OfWish(IntFunction<Wish> wish, Section section) implements Source {

        @Override
        public List<Problem> make(int count, long seed, Set<Problem> avoided) {
            return Maker.make(wish.apply(count), count, seed, avoided)
                            instanceof Made.Found(List<Problem> problems, _)
                    ? problems.stream().map(this::inSection).toList()
                    : List.of();
        }

        private Problem inSection(Problem problem) {
            Terms terms = problem.terms().withPoints(section.points()).withMode(section.mode());
            return switch (problem) {
                case Column column -> new Column(column.id(), column.rows(), terms);
                case Product product ->
                        new Product(
                                product.id(), product.multiplicand(), product.multiplier(), terms);
                case Quotient quotient ->
                        new Quotient(quotient.id(), quotient.dividend(), quotient.divisor(), terms);
                case Root root -> new Root(root.id(), root.degree(), root.of(), terms);
            };
        }
    }
}
