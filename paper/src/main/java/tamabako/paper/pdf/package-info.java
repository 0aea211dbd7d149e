/// Writes laid pages as PDF 1.7, tagged to PDF/UA-1 (ISO 14289-1): a structure tree in reading
/// order, rules and page numbers as artifacts, the language and a title that the window shows,
/// fonts embedded as subsets.
///
/// Example: `TaggedPdf.of(laid, new Description("Tuesday 3", Locale.ENGLISH, 7))` is the file. The
/// same pages give the same bytes.
@NullMarked
package tamabako.paper.pdf;

import org.jspecify.annotations.NullMarked;
