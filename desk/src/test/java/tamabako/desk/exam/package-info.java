/// Tests of the pages of exam outcomes.
@NullMarked
package tamabako.desk.exam;

import org.jspecify.annotations.NullMarked;
