/// Checks of what is said over the problems.
@NullMarked
package tamabako.paper.layout;

import org.jspecify.annotations.NullMarked;
