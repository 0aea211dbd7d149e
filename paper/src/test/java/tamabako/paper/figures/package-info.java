/// Checks of how numbers are written.
@NullMarked
package tamabako.paper.figures;

import org.jspecify.annotations.NullMarked;
