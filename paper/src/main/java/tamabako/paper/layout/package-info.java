/// What stands where on the pages, decided without knowing PDF.
///
/// A part of a sheet becomes a [tamabako.paper.layout.Laid]: pages, the
/// [tamabako.paper.layout.Element]s that are read, in reading order, and the decorations (rules,
/// boxes, page numbers) that are only seen. Lengths are points (1/72 inch) from the top left corner
/// of a page; [tamabako.paper.layout.Mark]s are what is drawn.
///
/// Example: ten columns of ten rows become two blocks of five; the block is as airy as lets the
/// whole part take the fewest pages. A column is one table of its own, so that it is read from top
/// to bottom, as it is worked.
@NullMarked
package tamabako.paper.layout;

import org.jspecify.annotations.NullMarked;
