/// Tests of `tamabako.desk.mark`.
@NullMarked
package tamabako.desk.mark;

import org.jspecify.annotations.NullMarked;
