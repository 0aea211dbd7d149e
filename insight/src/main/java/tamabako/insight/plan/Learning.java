package tamabako.insight.plan;

/// How practice tells: each time a move or kind of work is met, slips in it become so much fewer
/// that after `n` times they are `exp(-rate * n)` of what they were.
///
/// @param rate how much fewer each time, above 0
public record Learning(double rate) {

    /// What is taken where nothing was learned: an assumption. Only how practice tells in one thing
    /// against another matters for what is chosen.
    public static final Learning USUAL = new Learning(0.002);

    public Learning {
        if (!(rate > 0)) {
            throw new IllegalArgumentException("Practice tells by more than 0, not " + rate + ".");
        }
    }

    /// Which part of the slips is gone after so many times.
    double gone(double times) {
        return -Math.expm1(-rate * times);
    }
}
