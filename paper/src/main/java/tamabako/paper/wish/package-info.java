/// How a sheet is wished for in print, and what cannot be printed.
///
/// Example: `PrintWish.JAPANESE.with(Part.BOTH).with(Size.LARGE).onDate("4月14日")` prints a sheet
/// and its key in Japanese with large figures, the date already filled in. What cannot be printed
/// is refused as [tamabako.paper.wish.Unprintable], before a byte is written.
@NullMarked
package tamabako.paper.wish;

import org.jspecify.annotations.NullMarked;
