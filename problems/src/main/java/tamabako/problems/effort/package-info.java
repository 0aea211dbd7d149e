/// What a problem takes: strokes and motions of the hand, steps by each technique, and expected
/// seconds.
///
/// `Effort.of(problem)` counts what the frame's traces of the problem hold, setting and working
/// together, without making them where there is a faster way: columns are counted by
/// [tamabako.frame.walk.PackedTrace], products and quotients by a hand that only counts. Tests hold
/// all of it to the traces.
///
/// 34 + 78 takes six strokes in six motions, four direct steps and two ten-complements:
///
/// ```
/// Effort.of(ProblemText.parse("34 + 78")).techniques();   // {DIRECT=4, TEN_COMPLEMENT=2}
/// ```
@NullMarked
package tamabako.problems.effort;

import org.jspecify.annotations.NullMarked;
