/// The pages of the ladders: those that are shipped and the teacher's own, each with its grades,
/// sections and sources; what no body confirms is marked.
///
/// [KnownLadders] is where other pages find a ladder. A ladder of the teacher's own is a file in
/// the documented format; its mistakes are shown by their lines.
@NullMarked
package tamabako.desk.ladder;

import org.jspecify.annotations.NullMarked;
