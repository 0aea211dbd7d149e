package tamabako.problems.grade;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/// How many rows a column has, and of how many digits. Decimals count as digits, see [Amounts].
public sealed interface Lengths {

    /// How many rows, the first included.
    int rows();

    /// The digits of the shortest and of the longest row that there may be.
    Span digits();

    /// Every row has so many digits (keta-zoroi).
    record Equal(int rows, int length) implements Lengths {
        @Override
        public Span digits() {
            return Span.of(length);
        }
    }

    /// Each row has some number of digits in the range.
    record Between(int rows, Span digits) implements Lengths {}

    /// Each row has some number of digits in the range, all rows together `ji` digits (sōjisū).
    record InAll(int rows, Span digits, int ji) implements Lengths {

        public InAll {
            if (ji < rows * digits.least() || ji > rows * digits.most()) {
                throw new IllegalArgumentException(
                        "%d rows of %s digits do not have %d digits.".formatted(rows, digits, ji));
            }
        }
    }

    /// So many rows of each length, in any order.
    ///
    /// @param rowsByDigits how many rows there are by their digits
    record Table(SortedMap<Integer, Integer> rowsByDigits) implements Lengths {

        public Table {
            rowsByDigits = Collections.unmodifiableSortedMap(new TreeMap<>(rowsByDigits));
            if (rowsByDigits.isEmpty()) {
                throw new IllegalArgumentException("A table of lengths has one line at least.");
            }
        }

        @Override
        public int rows() {
            return rowsByDigits.values().stream().mapToInt(Integer::intValue).sum();
        }

        @Override
        public Span digits() {
            return new Span(rowsByDigits.firstKey(), rowsByDigits.lastKey());
        }

        /// The digits of all rows together (sōjisū).
        public int ji() {
            return rowsByDigits.entrySet().stream()
                    .mapToInt((Map.Entry<Integer, Integer> line) -> line.getKey() * line.getValue())
                    .sum();
        }
    }
}
