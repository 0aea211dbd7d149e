/// Columns of numbers (mitorizan): rows added and taken, digit by digit from the left.
///
/// A total below zero is worked by complements: one is borrowed from an imagined rod, the beads
/// that are *not* used show the debt, and the loan is given back when the total rises again. 0 - 95
/// on three rods: `000 → 100` (loan) `→ 010 → 005`, read -95.
@NullMarked
package tamabako.frame.column;

import org.jspecify.annotations.NullMarked;
