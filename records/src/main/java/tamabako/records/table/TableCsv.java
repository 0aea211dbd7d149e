package tamabako.records.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/// Writes a list as CSV after RFC 4180, in UTF-8 with the mark at its beginning by which
/// spreadsheets know it.
public final class TableCsv {

    private static final char MARK = '\uFEFF';

    private TableCsv() {}

    /// The file.
    public static byte[] write(BookTable table) {
        StringWriter text = new StringWriter();
        text.write(MARK);
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(table.columns());
            for (List<String> row : table.rows()) {
                csv.writeRecord(row.stream().map(PlainText::of).toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("Cannot write to memory.", impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
