/// What is told to whoever looks at a room, as server-sent events.
///
/// A message is put into bytes once and stands in a chain; each listener walks along the chain with
/// a virtual thread of its own, so that nobody has a queue or a buffer and a slow tablet holds up
/// nobody else. Messages are hints: whoever missed some asks for the state.
@NullMarked
package tamabako.desk.room.live;

import org.jspecify.annotations.NullMarked;
