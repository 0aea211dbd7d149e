/// How fast a pupil works, and which moves of the hand hold the pupil up.
///
/// The time of a problem is taken apart by a stroke-counting model: the logarithm of the seconds is
/// `log(sum(x * exp(v))) - tau`, where `x` are the seconds that each [Part] of the work takes a
/// usual pupil, `v` how much slower this pupil is in that part, and `tau` how fast the pupil is
/// altogether. What is left over is spread with fat tails (Student), so that a time with a pause in
/// it does little harm. [PaceFit] finds the likeliest `v` and `tau`, drawn toward pupils in general
/// ([PacePopulation]).
///
/// Sources: Card, Moran and Newell, "The keystroke-level model" (1980), for times that are sums
/// over strokes; van der Linden (2006) for logarithms of times that are normal about a pupil's
/// speed.
///
/// One worked example: a pupil is a tenth slower than usual in columns of many fives and a tenth
/// faster in others; so the five-complements are slow, the pupil altogether is not.
@NullMarked
package tamabako.insight.pace;

import org.jspecify.annotations.NullMarked;
