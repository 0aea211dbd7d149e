@NullMarked
package tamabako.voice.script;

import org.jspecify.annotations.NullMarked;
