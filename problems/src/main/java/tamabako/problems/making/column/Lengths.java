package tamabako.problems.making.column;

import java.util.Collections;
import java.util.List;
import tamabako.problems.words.Sayable;

/// How many digits (ji) the rows of a column have, decimals included.
///
/// However they are given, every choice of lengths that fits is equally likely, and every number of
/// its length.
public sealed interface Lengths extends Sayable {

    @Override
    default String topic() {
        return "lengths";
    }

    /// The fewest digits of a row.
    int least();

    /// The most digits of a row.
    int most();

    /// The fewest digits of `rows` rows in all.
    default int leastInAll(int rows) {
        return switch (this) {
            case Between(int least, _) -> rows * least;
            case Table(List<Integer> digits) -> digits.stream().mapToInt(one -> one).sum();
            case Total(int digits, _, _) -> digits;
        };
    }

    /// The most digits of `rows` rows in all.
    default int mostInAll(int rows) {
        return this instanceof Between(_, int most) ? rows * most : leastInAll(rows);
    }

    /// Every row for itself has `least` to `most` digits; as many in each row (keta-zoroi) where
    /// both are the same.
    record Between(int least, int most) implements Lengths {

        @Override
        public String template() {
            return least == most ? "lengths.equal" : "lengths.between";
        }
    }

    /// The rows have exactly these lengths, in any order.
    record Table(List<Integer> digits) implements Lengths {

        public Table {
            digits = digits.stream().sorted(Collections.reverseOrder()).toList();
        }

        @Override
        public int least() {
            return digits.isEmpty() ? 0 : digits.getLast();
        }

        @Override
        public int most() {
            return digits.isEmpty() ? 0 : digits.getFirst();
        }
    }

    /// The rows have `least` to `most` digits and `digits` in all (sōjisū).
    record Total(int digits, int least, int most) implements Lengths {}
}
