/// Tests of `tamabako.desk.opening`.
@NullMarked
package tamabako.desk.opening;

import org.jspecify.annotations.NullMarked;
