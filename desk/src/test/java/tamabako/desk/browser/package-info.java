/// The desk in a real browser, walked through as a teacher walks through a lesson.
@NullMarked
package tamabako.desk.browser;

import org.jspecify.annotations.NullMarked;
