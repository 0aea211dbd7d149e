/// Any sum worked bead by bead: as JSON, as text, and as a page that plays it on a drawn frame.
///
/// A [WorkWay] says how (which frame, how many rods, whose habits), [Worked] is the sum with its
/// working, and the rest tells it: [WorkJson] for programs, [WorkText] for the command line,
/// [WorkPages] for people. For 54 - 29 + 38 all of them tell the same states:
///
/// ```
/// 054 034 024 025 055 065 063 ... read 63
/// ```
@NullMarked
package tamabako.desk.work;

import org.jspecify.annotations.NullMarked;
