package tamabako.records;

import java.util.List;

/// Takes everything that a class book holds, table by table, row by row.
public interface WholeBook {

    /// The rows that follow are of the table `name`.
    ///
    /// @param columns the columns that each row gives, in that order
    void table(String name, List<String> columns);

    /// One row: a JSON array of texts, whole numbers and nulls, as one line.
    void row(String line);

    /// Takes everything and does nothing with it.
    WholeBook NOBODY =
            new WholeBook() {
                @Override
                public void table(String name, List<String> columns) {}

                @Override
                public void row(String line) {}
            };
}
