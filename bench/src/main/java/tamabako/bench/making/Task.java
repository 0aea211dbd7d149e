package tamabako.bench.making;

import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.column.DigitCondition.DigitsEach;
import tamabako.problems.making.column.DigitCondition.LeadsDiffer;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.HandCondition.TechniqueCount;
import tamabako.problems.making.column.TotalCondition.AnswerLength;

/// What is to be made.
enum Task {
    /// Ten rows of two digits, three minus rows at least, every step direct.
    DIRECT(
            ColumnWish.of(10, 2).withMinusRows(3, 9).allowing(Technique.DIRECT),
            new SolverTask(10, 2, 2, 2, 3, 9, Set.of(Technique.DIRECT), 0, 0, 0, false, 0)),
    /// Ten rows of four to six digits, three of them minus, each technique eight times at least,
    /// each digit four to six times, no lead twice running.
    RICH(
            rich(8),
            new SolverTask(10, 4, 6, 7, 3, 3, Set.of(Technique.values()), 8, 4, 6, true, 0)),
    /// Ten rows of ten digits, four of them minus, each digit ten times, an answer of ten digits.
    BALANCED(
            ColumnWish.of(10, 10)
                    .withMinusRows(4)
                    .with(new DigitsEach(10, 10))
                    .with(new AnswerLength(10, 10)),
            new SolverTask(
                    10, 10, 10, 11, 4, 4, Set.of(Technique.values()), 0, 10, 10, false, 10));

    private final ColumnWish wish;
    private final SolverTask forSolver;

    Task(ColumnWish wish, SolverTask forSolver) {
        this.wish = wish;
        this.forSolver = forSolver;
    }

    /// Rich columns with each technique so many times at least.
    static ColumnWish rich(int eachTechnique) {
        ColumnWish wish =
                ColumnWish.of(10, 4)
                        .withDigits(4, 6)
                        .withMinusRows(3)
                        .with(new DigitsEach(4, 6))
                        .with(new LeadsDiffer());
        for (Technique technique : Technique.values()) {
            wish = wish.with(new TechniqueCount(technique, eachTechnique, HandCondition.ANY));
        }
        return wish;
    }

    ColumnWish wish() {
        return wish;
    }

    SolverTask forSolver() {
        return forSolver;
    }

    /// Whether `rows` are such a column, worked by `hand`. Nothing of the makers is used for this.
    boolean isGrantedBy(long[] rows, Hand hand) {
        return forSolver.hasShape(rows)
                && hand.work(rows)
                && forSolver.isWorkedBy(hand)
                && forSolver.hasDigits(rows);
    }
}
