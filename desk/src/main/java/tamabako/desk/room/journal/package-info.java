/// Rooms that outlive the program: what happens in a room is kept before it is told.
///
/// [Rooms] is asked with a command and answers when what came of it is on the disk. The commands of
/// all rooms that come within some milliseconds are decided together and kept by one commit, so
/// that a thousand answers a second cost a hundred commits. A program that is killed reads the
/// events again when it starts, and the rounds go on. Several programs over one PostgreSQL share
/// the rooms: whoever decides holds the lock of the room and has read what the others kept.
@NullMarked
package tamabako.desk.room.journal;

import org.jspecify.annotations.NullMarked;
