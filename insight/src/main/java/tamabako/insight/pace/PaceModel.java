package tamabako.insight.pace;

/// A pupil in the stroke-time model: how much slower in each part, how fast altogether, and how
/// sure that is.
final class PaceModel {

    /// A part is told by the pupil's own times if they leave at most this much of the variance.
    private static final double MOST_LEFT = 0.7;

    private final PacePopulation population;
    private final double[] own;
    private final double[][] covariance;
    private final double noise;
    private final double[] factors = new double[Part.COUNT];

    /// @param population pupils in general
    /// @param own by part how much slower this pupil is than the middle one, and last how much
    ///   faster altogether: natural logarithms
    /// @param covariance of `own`
    /// @param noise the standard deviation of the logarithm of one time
    PaceModel(PacePopulation population, double[] own, double[][] covariance, double noise) {
        this.population = population;
        this.own = own;
        this.covariance = covariance;
        this.noise = noise;
        for (int i = 0; i < Part.COUNT; i++) {
            factors[i] = Math.exp(population.means().get(i) + own[i]);
        }
    }

    /// The logarithm of the seconds that a pupil takes who is as slow in each part as this one, and
    /// altogether neither fast nor slow.
    double shape(double[] usual) {
        double all = 0;
        for (int i = 0; i < Part.COUNT; i++) {
            all += usual[i] * factors[i];
        }
        return Math.log(all);
    }

    /// Adds what the parts of a problem take this pupil, as shares of the whole, to `shares`.
    void addShares(double[] usual, double[] shares, double weight) {
        double all = Math.exp(shape(usual));
        for (int i = 0; i < Part.COUNT; i++) {
            shares[i] += weight * usual[i] * factors[i] / all;
        }
    }

    PacePopulation population() {
        return population;
    }

    double[] own() {
        return own;
    }

    double[][] covariance() {
        return covariance;
    }

    double noise() {
        return noise;
    }

    /// What the parts of a problem take this pupil, as shares of the whole; last the logarithm of
    /// the seconds.
    static double[] shares(PacePopulation population, double[] own, double[] usual) {
        double[] shares = new double[Part.COUNT + 1];
        double all = 0;
        for (int i = 0; i < Part.COUNT; i++) {
            shares[i] = usual[i] * Math.exp(population.means().get(i) + own[i]);
            all += shares[i];
        }
        for (int i = 0; i < Part.COUNT; i++) {
            shares[i] /= all;
        }
        shares[Part.COUNT] = Math.log(all) - own[Part.COUNT];
        return shares;
    }

    LogSeconds expect(double[] usual) {
        double[] direction = shares(population, own, usual);
        double mean = direction[Part.COUNT];
        direction[Part.COUNT] = -1;
        double variance = variance(direction);
        return new LogSeconds(mean, Math.sqrt(variance + noise * noise), Math.sqrt(variance));
    }

    /// The variance of the sum of `own`, each times its entry of `direction`.
    double variance(double[] direction) {
        double variance = 0;
        for (int i = 0; i < direction.length; i++) {
            for (int j = 0; j < direction.length; j++) {
                variance += direction[i] * direction[j] * covariance[i][j];
            }
        }
        return Math.max(0, variance);
    }

    boolean tells(Part part) {
        double before = population.part() * population.part();
        return covariance[part.index()][part.index()] <= MOST_LEFT * before;
    }
}
