package tamabako.insight.pace;

/// How long a pupil is expected to take for a problem: the logarithm of the seconds is spread
/// normally.
///
/// @param mean the mean of the logarithm
/// @param deviation the standard deviation of the logarithm, for one working of one problem
/// @param doubt the part of it that is doubt about the pupil and so is the same for all problems
///   that are alike
public record LogSeconds(double mean, double deviation, double doubt) {

    /// The middle estimate in seconds.
    public double seconds() {
        return Math.exp(mean);
    }
}
