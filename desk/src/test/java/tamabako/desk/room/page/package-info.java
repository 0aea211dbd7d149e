/// Tests of the room.
@NullMarked
package tamabako.desk.room.page;

import org.jspecify.annotations.NullMarked;
