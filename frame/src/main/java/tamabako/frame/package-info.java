/// The abacus itself, and a hand that works on it by the trade's rules.
///
/// A [Frame] is a row of [Rod]s at rest. A [Stroke] is one push of one finger; strokes done
/// together are a [Motion]. A [Step] is one intended change on one rod, with its [Technique] and
/// its [Cause]. A [Hand] adds and takes digits and notes every step; what it noted is a [Trace],
/// and a trace exists only if its strokes replay to its end. A whole sum worked is a [Working].
///
/// Rods are numbered by the power of ten that they hold: rod 0 is the unit rod, rod 1 the tens, rod
/// -1 the tenths.
///
/// One worked example, 34 + 78 (states are the digits of the rods from the left):
///
/// ```
/// 034  set 34
/// 004  +7 on the tens: take off 3 ...          ten-complement
/// 104  ... and carry 1 to the hundreds         direct
/// 102  +8 on the units: take off 2 ...         ten-complement
/// 112  ... and carry 1 to the tens             direct
/// ```
///
/// The procedures are in `column`, `product`, `quotient` and `root`; what a step is called in
/// English and Japanese is in `words`. This module knows nothing but itself.
@NullMarked
package tamabako.frame;

import org.jspecify.annotations.NullMarked;
