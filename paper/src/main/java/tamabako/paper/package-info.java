/// Everything printed: sheets of problems, whole papers and what belongs to them become PDF.
///
/// Examples: `SheetPrint.write(sheet, PrintWish.JAPANESE.with(Part.BOTH), out)` writes the problems
/// of a sheet and after them the answers; `PaperPrint.write(papers, PaperPrintWish.JAPANESE, out)`
/// writes papers with their slip pads, scripts, keys and marking sheets. The wish is told in
/// `wish`, numbers are written in `figures`, `layout` decides what stands where, and `pdf` writes
/// it, tagged so that a screen reader can read it (PDF/UA-1, ISO 14289-1).
@NullMarked
package tamabako.paper;

import org.jspecify.annotations.NullMarked;
