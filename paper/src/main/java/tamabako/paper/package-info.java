/// Everything printed: a sheet of problems and its key become one PDF of A4 pages.
///
/// Example: `SheetPrint.write(sheet, PrintWish.JAPANESE.with(Part.BOTH), out)` writes the problems
/// and after them the answers. The wish is told in `wish`, numbers are written in `figures`,
/// `layout` decides what stands where, and `pdf` writes it, tagged so that a screen reader can read
/// it (PDF/UA-1, ISO 14289-1).
@NullMarked
package tamabako.paper;

import org.jspecify.annotations.NullMarked;
