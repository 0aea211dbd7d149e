/// A room: a class that works together, each pupil at a seat, as a pure core.
///
/// A [RoomState] is all that is known of a room. Somebody wishes for something, a [RoomCommand];
/// [RoomState#decide] answers with the [RoomEvent]s that follow from it or with the [Refusal];
/// [RoomState#apply] makes the next state of an event. The events are what is kept: applied one
/// after another to a room that was just opened they give the state again, on this machine or
/// another.
///
/// Seat 3 writes `112` as its first answer: `Answer(3, key, run 1, number 1, problem 0, "112")`
/// gives `Answered(3, 1, 0, "112", "right", ...)`. The same command again gives nothing, since
/// number 1 of seat 3 was taken already; the sender gets the same answer as before.
@NullMarked
package tamabako.desk.room;

import org.jspecify.annotations.NullMarked;
