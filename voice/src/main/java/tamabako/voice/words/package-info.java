/// What a caller's tool says to the teacher: why a column cannot be called, and how to mend it.
@NullMarked
package tamabako.voice.words;

import org.jspecify.annotations.NullMarked;
