/// The same work without objects: for makers and slip finders that walk millions of columns.
///
/// A number is packed into one long, a rod to every four bits: the upper bead in the highest of the
/// four, the lower beads in the other three ([PackedNumber]). A row is put on all rods at once
/// ([AllRods]); what the fingers do is counted ([ColumnWalk]) or noted step by step in a reused
/// array ([PackedTrace]). Both agree with the trace of [tamabako.frame.column.ColumnWork], step for
/// step; tests hold them to it.
///
/// Why a row can be done at once although the hand goes rod by rod: the hand goes from the left, so
/// a rod still holds its old digit when the digit of the row comes to it; and a rod is carried to
/// at most once a row, because a rod that has just passed ten shows at most 8.
///
/// One worked example, 34 + 78 (each digit step beside the carry that follows it):
///
/// ```
/// digit steps  +7 on 3: ten-complement, shows 0    +8 on 4: ten-complement, shows 2
/// carries      on 0 (hundreds): direct, shows 1    on 0 (tens): direct, shows 1
/// counted      2 direct, 2 ten-complement, 2 carries, and 2 direct for setting 34
/// ```
@NullMarked
package tamabako.frame.walk;

import org.jspecify.annotations.NullMarked;
