/// What is told to whoever looks at a room, as server-sent events.
///
/// A message is put into bytes once and stands in a chain; each listener walks along the chain as
/// its connection takes the bytes, so that nobody has a thread, a queue or a buffer and a slow
/// tablet holds up nobody else. Messages are hints: whoever missed some asks for the state.
@NullMarked
package tamabako.desk.room.live;

import org.jspecify.annotations.NullMarked;
