/// Marking: a sheet and a pupil are chosen, the answers typed or pasted, and marked at once.
///
/// An answer `12` to 34 + 78 is wrong (112 is right), and the page says what most likely went
/// wrong: the carry to the hundreds was left out; it also links to the sum worked bead by bead.
/// What was marked is kept in the class book before it is shown.
@NullMarked
package tamabako.desk.mark;

import org.jspecify.annotations.NullMarked;
