/// The room under load, beside two general-purpose servers that carry the same pages.
///
/// [RoomLoad] starts the servers one after another, each in a process of its own, and sits down at
/// up to 5,000 seats; [KillRounds] kills the desk in the middle of a round, a hundred times;
/// [AnswerRate] compares the journal with one commit an answer.
@NullMarked
package tamabako.bench.room;

import org.jspecify.annotations.NullMarked;
