package tamabako.insight.slip;

/// What a change in the middle of the work does to the answer.
///
/// Answers are compared in tenths of their last place, so that a point one place too far left still
/// makes a whole difference.
@FunctionalInterface
interface Effect {

    /// A column, or an exact product: what is added on the frame is added to the answer.
    Effect ADDED = change -> 10 * change;

    /// By how much the answer differs, in tenths of its last place, if the working is off by
    /// `change` in units of its own last place.
    long tenths(long change);
}
