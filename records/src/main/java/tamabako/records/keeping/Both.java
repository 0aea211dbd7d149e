package tamabako.records.keeping;

import java.util.List;
import tamabako.records.WholeBook;

/// Hands what comes to two takers.
record Both(WholeBook one, WholeBook other) implements WholeBook {

    @Override
    public void table(String name, List<String> columns) {
        one.table(name, columns);
        other.table(name, columns);
    }

    @Override
    public void row(String line) {
        one.row(line);
        other.row(line);
    }
}
