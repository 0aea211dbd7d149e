/// Work on a quotient.
@NullMarked
package tamabako.frame.quotient;

import org.jspecify.annotations.NullMarked;
