@NullMarked
package tamabako.desk.book;

import org.jspecify.annotations.NullMarked;
