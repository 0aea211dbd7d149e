/// What is asked: a [Problem] is a column, a product, a quotient or a root, with the [Terms] under
/// which it is answered. A [Sheet] is a list of problems.
///
/// Every problem knows its right [Answer], by exact decimal arithmetic, and can be worked bead by
/// bead; the two always agree. Problems are written and read in `text` (plain lines) and `json`,
/// made in `making`, and what a pupil wrote is judged in `marking`.
@NullMarked
package tamabako.problems;

import org.jspecify.annotations.NullMarked;
