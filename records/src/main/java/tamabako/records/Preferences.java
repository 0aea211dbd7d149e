package tamabako.records;

/// How practice is shown to a pupil. No reason is asked or kept.
///
/// @param noFlashing numbers are never shown as flashes to this pupil
/// @param extraTime how much longer than the others the pupil may take, per cent, 0 to 300
/// @param pace the pace of calls and showings for the pupil, per cent of the usual, 20 to 300
public record Preferences(boolean noFlashing, int extraTime, int pace) {

    /// As for everyone.
    public static final Preferences USUAL = new Preferences(false, 0, 100);

    /// The most extra time, per cent.
    public static final int MOST_EXTRA_TIME = 300;

    /// The slowest and the fastest pace, per cent of the usual.
    public static final int SLOWEST = 20;

    public static final int FASTEST = 300;

    public Preferences {
        if (extraTime < 0 || extraTime > MOST_EXTRA_TIME) {
            throw new IllegalArgumentException("Extra time is 0 to 300 %, not " + extraTime + ".");
        }
        if (pace < SLOWEST || pace > FASTEST) {
            throw new IllegalArgumentException("The pace is 20 to 300 %, not " + pace + ".");
        }
    }
}
