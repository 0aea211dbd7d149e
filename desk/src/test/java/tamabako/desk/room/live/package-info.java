/// Event streams.
@NullMarked
package tamabako.desk.room.live;

import org.jspecify.annotations.NullMarked;
