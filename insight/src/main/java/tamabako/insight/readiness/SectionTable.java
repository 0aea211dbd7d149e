package tamabako.insight.readiness;

import java.util.Arrays;

/// What a section brings every pupil that one pupil may be: a row of numbers for each place of the
/// grid of slips, and for each pace.
///
/// @see Draws
final class SectionTable {

    private static final int APART = Draws.ALONE.length;

    private final int lowest;
    private final int places;
    private final int width;
    private final double[] numbers;

    private SectionTable(int lowest, int highest, int width) {
        this.lowest = lowest;
        this.places = highest - lowest + 1;
        this.width = width;
        this.numbers = new double[Draws.TOGETHER.length * APART * places * width];
    }

    /// How the numbers are read off the scores, which are counted in right answers.
    interface Reading {

        /// Works the section with these chances and writes its numbers from `at` on.
        void read(ScoreSums sums, double[] right, double[] going, double[] into, int at);
    }

    /// A table for places from `lowest` to `highest`, of `width` numbers each.
    ///
    /// @param slips the slips expected in each problem
    /// @param going for each pace, together and alone, the chance of each problem to be done in
    ///   time once the one before was
    static SectionTable of(
            double[] slips,
            SlipBelief grid,
            double[][] going,
            int lowest,
            int highest,
            int width,
            Reading reading) {
        SectionTable table = new SectionTable(lowest, highest, width);
        ScoreSums sums = new ScoreSums(slips.length);
        double[] right = new double[slips.length];
        for (int place = 0; place < table.places; place += place < table.places - 2 ? 2 : 1) {
            double times = grid.times(lowest + place);
            for (int i = 0; i < right.length; i++) {
                right[i] = Math.exp(-slips[i] * times);
            }
            for (int pace = 0; pace < going.length; pace++) {
                int at = (pace * table.places + place) * width;
                if (pace > 0 && Arrays.equals(going[pace], going[pace - 1])) {
                    int before = at - table.places * width;
                    System.arraycopy(table.numbers, before, table.numbers, at, width);
                } else {
                    reading.read(sums, right, going[pace], table.numbers, at);
                }
            }
        }
        table.fill(going.length);
        return table;
    }

    /// Fills every second place by the cubic through its four neighbours.
    private void fill(int paces) {
        for (int pace = 0; pace < paces; pace++) {
            for (int place = 1; place < places - 2; place += 2) {
                boolean four = place >= 3 && place + 3 < places - 1;
                int at = (pace * places + place) * width;
                for (int i = at; i < at + width; i++) {
                    double near = numbers[i - width] + numbers[i + width];
                    double far = four ? numbers[i - 3 * width] + numbers[i + 3 * width] : near;
                    numbers[i] = Math.max(0, (9 * near - far) / 16);
                }
            }
        }
    }

    /// Where the numbers of a pupil begin in [#numbers()].
    int at(int together, int alone, int place) {
        int within = Math.clamp(place - lowest, 0, places - 1);
        return ((together * APART + alone) * places + within) * width;
    }

    double[] numbers() {
        return numbers;
    }
}
