@NullMarked
package tamabako.voice.sound;

import org.jspecify.annotations.NullMarked;
