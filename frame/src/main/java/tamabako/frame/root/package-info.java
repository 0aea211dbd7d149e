/// Work on a root.
@NullMarked
package tamabako.frame.root;

import org.jspecify.annotations.NullMarked;
