package tamabako.records;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import org.jdbi.v3.core.statement.PreparedBatch;

/// A row of any table as one line: a JSON array of texts, whole numbers and nulls. The same row
/// makes the same line in every database.
final class RowLine {

    private static final ObjectMapper JSON = new ObjectMapper();

    private RowLine() {}

    static String of(ResultSet row, int columns) throws SQLException {
        ArrayNode line = JsonNodeFactory.instance.arrayNode(columns);
        for (int column = 1; column <= columns; column++) {
            switch (row.getObject(column)) {
                case null -> line.addNull();
                case String text -> line.add(text);
                case Integer whole -> line.add(whole.longValue());
                case Long whole -> line.add(whole.longValue());
                case Object other ->
                        throw new IllegalStateException(
                                "The class book holds texts and whole numbers, no %s (%s)."
                                        .formatted(
                                                other.getClass().getSimpleName(),
                                                row.getMetaData().getColumnName(column)));
            }
        }
        return line.toString();
    }

    /// The row that stands in a line.
    ///
    /// @throws IllegalArgumentException if it is no row of so many columns
    static ArrayNode parse(String line, int columns) {
        try {
            if (JSON.readTree(line) instanceof ArrayNode row && row.size() == columns) {
                return row;
            }
        } catch (JsonProcessingException broken) {
            throw new IllegalArgumentException("This is no row: " + line, broken);
        }
        throw new IllegalArgumentException("A row of %d was expected.".formatted(columns));
    }

    /// Puts the values of a row in their places.
    static void bind(ArrayNode row, PreparedBatch batch) {
        for (int place = 0; place < row.size(); place++) {
            JsonNode value = row.get(place);
            if (value.isTextual()) {
                batch.bind(place, value.textValue());
            } else if (value.isIntegralNumber() && value.canConvertToLong()) {
                batch.bind(place, value.longValue());
            } else if (value.isNull()) {
                batch.bindNull(place, Types.NULL);
            } else {
                throw new IllegalArgumentException("The class book holds no " + value + ".");
            }
        }
    }
}
