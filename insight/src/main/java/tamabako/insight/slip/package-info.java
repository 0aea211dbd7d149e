/// What a wrong answer tells about the slip behind it.
///
/// Every slip of hand or eye only adds something to the answer, so a wrong answer shows no more
/// than its difference from the right one. All single slips that a problem and its beads allow are
/// listed with their differences ([EventTable]); those that lead to the answer are weighed by how
/// often such slips are made ([Rates]); what comes out ([Finding]) is a ranking of [SlipKind]s,
/// each at its likeliest place, with a share for "none that is known". Two slips at once are looked
/// for where chance would not explain as much ([Explanations]). [SlipWords] says it for a teacher,
/// [SlipJson] for a program; [Diagnosis] and [Evidence] are for reckoning on with many answers.
///
/// One worked example, 34 + 78 = 112, written 12, which is 100 too small:
///
/// ```
/// carry-left-out  .80  row 2, rod 2: the carry to the hundreds
/// written-length  .11  the first 1 of 112 not written
/// one-bead        .08  row 2, rod 2: the bead of the hundreds not moved
/// none-known      .01
/// ```
@NullMarked
package tamabako.insight.slip;

import org.jspecify.annotations.NullMarked;
