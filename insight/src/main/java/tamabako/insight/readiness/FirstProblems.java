package tamabako.insight.readiness;

import java.util.stream.IntStream;

/// What the first so many problems of a section bring every pupil that one pupil may be, one after
/// another done. How many of them the clock lets a pupil do is a matter of the pace alone, so these
/// numbers serve every pace.
///
/// Of the places of the grid of slips every second one is worked out, and the last ones all.
final class FirstProblems {

    private final int lowest;
    private final int places;
    private final int count;
    private final int columns;
    private final int[] worked;
    private final double[][] rows;

    /// How the numbers are read off the scores, which are counted in right answers.
    interface Reading {

        /// How many numbers there are for each count of problems.
        int columns();

        /// Writes the numbers of the problems in `scores` from `at` on.
        void read(ScoreSums scores, double[] into, int at);
    }

    /// For places from `lowest` to `highest`.
    ///
    /// @param slips the slips expected in each problem
    FirstProblems(double[] slips, SlipBelief grid, int lowest, int highest, Reading reading) {
        this.lowest = lowest;
        this.places = highest - lowest + 1;
        this.count = slips.length;
        this.columns = reading.columns();
        this.worked =
                IntStream.range(0, places)
                        .filter(place -> place % 2 == 0 || place > places - 3)
                        .toArray();
        this.rows = new double[worked.length][(count + 1) * columns];
        ScoreSums scores = new ScoreSums(count);
        for (int i = 0; i < worked.length; i++) {
            double times = grid.times(lowest + worked[i]);
            scores.startAtNothing();
            reading.read(scores, rows[i], 0);
            for (int done = 1; done <= count; done++) {
                scores.add(Math.exp(-slips[done - 1] * times));
                reading.read(scores, rows[i], done * columns);
            }
        }
    }

    int lowest() {
        return lowest;
    }

    int places() {
        return places;
    }

    /// How many problems the section has.
    int count() {
        return count;
    }

    int columns() {
        return columns;
    }

    /// The places that are worked out, from 0 at the lowest.
    int[] worked() {
        return worked;
    }

    /// The numbers at the `i`-th of these places: a row of [#columns()] for 0 problems and up.
    double[] rows(int i) {
        return rows[i];
    }
}
