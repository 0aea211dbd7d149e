/// Checks of the messages.
@NullMarked
package tamabako.paper.wish;

import org.jspecify.annotations.NullMarked;
