/// Checks of what is printed, by reading it back.
@NullMarked
package tamabako.paper;

import org.jspecify.annotations.NullMarked;
