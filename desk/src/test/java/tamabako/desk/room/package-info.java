/// Tests of the room.
@NullMarked
package tamabako.desk.room;

import org.jspecify.annotations.NullMarked;
