/// What a wrong answer tells about the slip behind it.
///
/// Every bead slip only adds something to the answer, so a wrong answer shows no more than its
/// difference from the right one. The finder lists every single slip that gives this difference and
/// weighs each by how often such slips are made ([Rates]): a [Finding] is a ranking of [SlipKind]s,
/// each at its likeliest place, with a share for "none that is known".
///
/// One worked example, 34 + 78 = 112, written 12. Off by 100: the carry to the hundreds was left
/// out (row 2, rod 2), or the 7 was taken for ... -3 without its ten, or the 1 of 112 was dropped
/// in writing, or a bead fell on the hundreds.
@NullMarked
package tamabako.insight.slip;

import org.jspecify.annotations.NullMarked;
