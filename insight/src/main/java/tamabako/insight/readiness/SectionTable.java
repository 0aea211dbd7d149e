package tamabako.insight.readiness;

import java.util.Arrays;

/// What a section brings every pupil that one pupil may be: a row of numbers for each place of the
/// grid of slips, and for each pace.
///
/// `P(score = s) = sum over m of [P(T(1..m) <= C) - P(T(1..m+1) <= C)] * PB(m, s)`, as in
/// [ScoreChances]: the PB are the [FirstProblems], and each pace mixes them.
///
/// @see Draws
final class SectionTable {

    private static final int APART = Draws.ALONE.length;

    /// A number of problems that the clock allows with less than this chance is left out. A section
    /// has at most a few hundred of them, so that no number is off by more than 1e-15.
    private static final double NEVER = 1e-18;

    private final int lowest;
    private final int places;
    private final int width;
    private final double[] numbers;

    private SectionTable(FirstProblems first, int width) {
        this.lowest = first.lowest();
        this.places = first.places();
        this.width = width;
        this.numbers = new double[Draws.TOGETHER.length * APART * places * width];
    }

    /// How the numbers of a table are put together.
    interface Putting {

        /// How many there are for each place and pace.
        int width();

        /// Writes them from `at` on.
        ///
        /// @param done the numbers of [FirstProblems] together with being done with the section
        /// @param stopped the same together with being stopped by the clock in it
        void put(double[] done, double[] stopped, double[] into, int at);
    }

    /// The table of a section.
    ///
    /// @param going for each pace, together and alone, the chance of each problem to be done in
    ///   time once the one before was
    static SectionTable of(FirstProblems first, double[][] going, Putting putting) {
        int width = putting.width();
        SectionTable table = new SectionTable(first, width);
        int columns = first.columns();
        double[] done = new double[columns];
        double[] stopped = new double[columns];
        for (int pace = 0; pace < going.length; pace++) {
            int from = pace * table.places * width;
            if (pace > 0 && Arrays.equals(going[pace], going[pace - 1])) {
                int many = table.places * width;
                System.arraycopy(table.numbers, from - many, table.numbers, from, many);
                continue;
            }
            double[] stops = stops(going[pace]);
            for (int i = 0; i < first.worked().length; i++) {
                Arrays.fill(done, 0);
                Arrays.fill(stopped, 0);
                double[] rows = first.rows(i);
                for (int many = 0; many < first.count(); many++) {
                    if (stops[many] >= NEVER) {
                        add(stops[many], rows, many * columns, stopped);
                    }
                }
                add(stops[first.count()], rows, first.count() * columns, done);
                putting.put(done, stopped, table.numbers, from + first.worked()[i] * width);
            }
            table.fill(pace);
        }
        return table;
    }

    /// The chance of each number of problems that are done in time.
    private static double[] stops(double[] going) {
        double[] stops = new double[going.length + 1];
        double reached = 1;
        for (int i = 0; i < going.length; i++) {
            stops[i] = reached * (1 - going[i]);
            reached *= going[i];
        }
        stops[going.length] = reached < NEVER ? 0 : reached;
        return stops;
    }

    private static void add(double weight, double[] rows, int at, double[] into) {
        for (int i = 0; i < into.length; i++) {
            into[i] += weight * rows[at + i];
        }
    }

    /// Fills every second place of a pace by the cubic through its four neighbours.
    private void fill(int pace) {
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

    /// Where the numbers of a pupil begin in [#numbers()].
    int at(int together, int alone, int place) {
        int within = Math.clamp(place - lowest, 0, places - 1);
        return ((together * APART + alone) * places + within) * width;
    }

    double[] numbers() {
        return numbers;
    }
}
