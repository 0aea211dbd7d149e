package tamabako.desk.showing;

import tamabako.showing.safety.FlashAnalyser;

/// How fast numbers come.
///
/// @param period from the onset of one number to that of the next, in milliseconds
public record Pace(double period) {

    /// From 10 numbers a second to one in 20 seconds.
    static final double FASTEST = 100;

    static final double SLOWEST = 20_000;

    /// A slow pace for those who are not to see numbers flash, in milliseconds.
    private static final double CALM = 1000;

    private static final double GAP_SHARE = 0.3;
    private static final double LEAST_GAP = 50;
    private static final double MOST_GAP = 200;

    public Pace {
        if (!(period >= FASTEST && period <= SLOWEST)) {
            throw new IllegalArgumentException(
                    "A number takes 0.1 to 20 s, not " + period + " ms.");
        }
    }

    /// How long a number stays, in milliseconds: the pause after it tells two equal numbers apart.
    public double shown() {
        return period - Math.clamp(period * GAP_SHARE, LEAST_GAP, MOST_GAP);
    }

    /// Whether numbers of any size may come at this pace.
    public boolean isSlowEnoughForAnySize() {
        return period >= FlashAnalyser.LEAST_PERIOD;
    }

    /// At this percentage of the pace, as far as there is one.
    Pace at(int percent) {
        return new Pace(Math.clamp(period * 100 / percent, FASTEST, SLOWEST));
    }

    /// This pace, or the calm one where this is faster.
    public Pace calm() {
        return new Pace(Math.max(period, CALM));
    }
}
