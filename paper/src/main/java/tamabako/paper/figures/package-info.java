/// How numbers stand on paper: a comma every three digits, a minus sign set clear of the digits,
/// and every digit in a cell of the same width, so that units stand under units.
///
/// Example: minus 1234567 yen is written `−¥1,234,567`, and its seven digits take seven equal
/// [tamabako.paper.figures.Cells].
@NullMarked
package tamabako.paper.figures;

import org.jspecify.annotations.NullMarked;
