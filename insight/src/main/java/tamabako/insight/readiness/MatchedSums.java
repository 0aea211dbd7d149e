package tamabako.insight.readiness;

/// Sums of lognormal times taken for lognormal, with the mean and variance of the sum.
///
/// Source: L. F. Fenton, "The sum of log-normal probability distributions in scatter transmission
/// systems" (1960).
final class MatchedSums implements TimeSums {

    private final double[] means;
    private final double[] spreads;

    MatchedSums(double[] logs, double spread) {
        this.means = new double[logs.length];
        this.spreads = new double[logs.length];
        double mean = 0;
        double variance = 0;
        for (int i = 0; i < logs.length; i++) {
            double one = Math.exp(logs[i] + spread * spread / 2);
            mean += one;
            variance += Math.expm1(spread * spread) * one * one;
            double logVariance = Math.log1p(variance / (mean * mean));
            means[i] = Math.log(mean) - logVariance / 2;
            spreads[i] = Math.sqrt(logVariance);
        }
    }

    @Override
    public double within(int count, double limit) {
        double off = limit - means[count - 1];
        double spread = spreads[count - 1];
        return spread == 0 ? (off >= 0 ? 1 : 0) : NormalCurve.below(off / spread);
    }
}
