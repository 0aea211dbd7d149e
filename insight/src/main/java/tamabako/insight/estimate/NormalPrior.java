package tamabako.insight.estimate;

/// What a quantity is held to be before anything was seen: normally distributed.
///
/// @param sd standard deviation, above zero; infinite where nothing is known
public record NormalPrior(double mean, double sd) {

    /// Nothing is known beforehand.
    public static final NormalPrior FLAT = new NormalPrior(0, Double.POSITIVE_INFINITY);

    public NormalPrior {
        if (!(sd > 0) || !Double.isFinite(mean)) {
            throw new IllegalArgumentException("No normal prior: " + mean + " with sd " + sd + ".");
        }
    }

    double precision() {
        return 1 / (sd * sd);
    }
}
