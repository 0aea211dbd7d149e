/// Tests of how pupils get on.
@NullMarked
package tamabako.desk.progress;

import org.jspecify.annotations.NullMarked;
