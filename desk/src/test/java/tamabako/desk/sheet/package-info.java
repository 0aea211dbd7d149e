/// Tests of `tamabako.desk.sheet`.
@NullMarked
package tamabako.desk.sheet;

import org.jspecify.annotations.NullMarked;
