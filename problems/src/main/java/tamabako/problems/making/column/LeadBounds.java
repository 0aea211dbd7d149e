package tamabako.problems.making.column;

import tamabako.problems.making.draw.Powers;

/// What the leads of a column tell of its running total and its answer, row by row: each total lies
/// between what it is if zeros follow the leads of added rows and nines those of taken ones, and
/// the reverse.
final class LeadBounds {

    private final boolean neverBelow;
    private final long leastAnswer;
    private final long mostAnswer;
    private long least;
    private long most;

    private LeadBounds(boolean neverBelow, long leastAnswer, long mostAnswer) {
        this.neverBelow = neverBelow;
        this.leastAnswer = leastAnswer;
        this.mostAnswer = mostAnswer;
    }

    static LeadBounds of(Asked asked) {
        TotalCondition.AnswerLength length = asked.answerLength();
        return new LeadBounds(
                asked.neverBelow(),
                length.least() <= 1 ? 0 : Powers.of(Math.min(18, length.least() - 1)),
                Powers.of(Math.clamp(length.most(), 0, 18)));
    }

    /// Bounds that every column keeps.
    static LeadBounds none() {
        return new LeadBounds(false, 0, Long.MAX_VALUE);
    }

    void clear() {
        least = 0;
        most = 0;
    }

    /// Goes on with a row; false if the total is below zero then, whatever follows the leads, and
    /// may not be.
    boolean add(boolean minus, int lead, int length) {
        long unit = Powers.of(length - 1);
        long from = lead * unit;
        least += minus ? -from - unit : from;
        most += minus ? -from : from + unit;
        return !neverBelow || most >= 0;
    }

    /// Whether the answer may have the length that is asked for.
    boolean mayEnd() {
        return !neverBelow || (most >= leastAnswer && least < mostAnswer);
    }
}
