/// Who is ready for which exam: the chance of every score against the clock, and what stands behind
/// it.
///
/// A problem goes right with the chance `exp(-h * slips)`: `slips` are those expected of pupils in
/// general ([Expected]), `h` is how many times as often this pupil slips. A problem takes `v` times
/// as long as it takes pupils in general. Both are not known but believed in more or less
/// ([Standing]): shared by all work, with something of its own for each [Field], and other on every
/// day. From the sections of the paper ([Outline]) comes the chance of each score ([ScoreChances])
/// for every pupil that this one may be, and from all of them the chance to pass ([Readiness]).
///
/// One worked example: two problems of 5 points that go right with the chances .9 and .8 and are
/// both reached score 10 with the chance .72, 5 with .26 and 0 with .02. If the second is reached
/// in time with the chance one half, these are .36, .54 and .10 (.45 + .09 and .05 + .05 come
/// together).
@NullMarked
package tamabako.insight.readiness;

import org.jspecify.annotations.NullMarked;
