/// Tests of the room.
@NullMarked
package tamabako.desk.room.journal;

import org.jspecify.annotations.NullMarked;
