package tamabako.insight.rule;

/// How often a pupil who has a wrong rule follows it: the values that are tried.
final class Following {

    private static final double[] GRID = {0.15, 0.3, 0.5, 0.7, 0.9, 1};

    private Following() {}

    /// How many values there are.
    static int values() {
        return GRID.length;
    }

    /// Value `i`, from 0.
    static double value(int i) {
        return GRID[i];
    }

    /// The chance of following a rule so often and not following it so often, at value `i`.
    static double chance(int i, int followed, int refused) {
        return power(GRID[i], followed) * power(1 - GRID[i], refused);
    }

    /// The mean of it over all values.
    static double usual(int followed, int refused) {
        double sum = 0;
        for (int i = 0; i < GRID.length; i++) {
            sum += chance(i, followed, refused);
        }
        return sum / GRID.length;
    }

    private static double power(double base, int exponent) {
        double power = 1;
        for (int i = 0; i < exponent; i++) {
            power *= base;
        }
        return power;
    }
}
