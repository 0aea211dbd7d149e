/// Columns to a wish: what can be asked of a column, and how such columns are drawn.
///
/// A column has a [Shape] and [Signs]; everything else that is asked of it is a [Condition], which
/// checks a made column and says in words what failed. 54 - 29 + 38 has the shape of three rows of
/// two digits and one minus row; `new DigitCondition.LeadsDiffer()` holds, for 5, 2 and 3 differ.
@NullMarked
package tamabako.problems.making.column;

import org.jspecify.annotations.NullMarked;
