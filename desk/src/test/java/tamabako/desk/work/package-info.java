/// Worked sums and the free frame, from the JSON to the browser.
@NullMarked
package tamabako.desk.work;

import org.jspecify.annotations.NullMarked;
