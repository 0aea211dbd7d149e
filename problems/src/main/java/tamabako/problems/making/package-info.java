/// Problems made to a teacher's [Wish].
///
/// A beginner's column: five rows of one digit, direct moves only, and the five taught this week
/// must come. `Maker.make(ColumnWish.of(5, 1).allowing(DIRECT, FIVE_COMPLEMENT)
/// .requiring(FIVE_COMPLEMENT), 20, 7)` makes twenty such columns from the seed 7, the same ones on
/// every machine. What cannot be made is [Made.Impossible], with the reason and, where one is
/// known, the nearest wish that works.
@NullMarked
package tamabako.problems.making;

import org.jspecify.annotations.NullMarked;
