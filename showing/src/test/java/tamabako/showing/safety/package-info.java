@NullMarked
package tamabako.showing.safety;

import org.jspecify.annotations.NullMarked;
