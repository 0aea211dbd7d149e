@NullMarked
package tamabako.desk.entry;

import org.jspecify.annotations.NullMarked;
