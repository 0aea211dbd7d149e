/// Checks of the fonts and of the written files.
@NullMarked
package tamabako.paper.pdf;

import org.jspecify.annotations.NullMarked;
