/// Slip pads (denpyōzan): pads of numbered amounts, and the problems that are worked from them.
///
/// A pad has leaves bound on one side, each with as many numbered amounts, five as a rule. A
/// problem is one line over so many leaves running, from any leaf. On the frame it is a column like
/// any other, told by a [tamabako.problems.PadLine].
///
/// `PadMaker.make(PadWish.of(8, new Digits(3, 5)), 15, 7)` makes a pad and fifteen problems of
/// eight leaves each; the same ones on every machine.
@NullMarked
package tamabako.problems.pad;

import org.jspecify.annotations.NullMarked;
