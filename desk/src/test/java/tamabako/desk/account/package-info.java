@NullMarked
package tamabako.desk.account;

import org.jspecify.annotations.NullMarked;
