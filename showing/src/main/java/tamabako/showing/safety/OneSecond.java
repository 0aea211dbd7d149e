package tamabako.showing.safety;

/// Counting within one second, as "more than three times in any one second period" is read here:
/// the second begins with one change and leaves out what comes exactly a second later.
final class OneSecond {

    private static final double SECOND = 1000;

    /// Times worked out from frames of a screen come to a second only nearly.
    private static final double SLACK = 1e-6;

    private OneSecond() {}

    /// The most of the first `count` of `times`, which ascend, that lie within one second.
    static int most(double[] times, int count) {
        int most = 0;
        int first = 0;
        for (int last = 0; last < count; last++) {
            while (times[last] - times[first] >= SECOND - SLACK) {
                first++;
            }
            most = Math.max(most, last - first + 1);
        }
        return most;
    }
}
