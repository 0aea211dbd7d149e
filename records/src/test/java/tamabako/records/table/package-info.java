@NullMarked
package tamabako.records.table;

import org.jspecify.annotations.NullMarked;
