/// The pages of a room: the teacher's, the projector's and the pupils'.
///
/// A pupil comes to `/join`, types the code, picks a name and gets a cookie with the secret of the
/// seat; `/seat/ROOM` is the page to work on. The teacher's page `/room/ROOM` and the projector's
/// `/room/ROOM/board` show parts that the server renders again whenever something changed.
@NullMarked
package tamabako.desk.room.page;

import org.jspecify.annotations.NullMarked;
