@NullMarked
package tamabako.voice.number;

import org.jspecify.annotations.NullMarked;
