package tamabako.records.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/// Writes a list as a workbook (XLSX) of one sheet. Whole numbers are numbers, all else is text.
public final class TableBook {

    private static final int LONGEST_TITLE = 31;

    private TableBook() {}

    /// The file.
    public static byte[] write(BookTable table) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Tamabako", "1.0")) {
            Worksheet sheet = workbook.newWorksheet(title(table.title()));
            row(sheet, 0, table.columns());
            sheet.range(0, 0, 0, Math.max(0, table.columns().size() - 1)).style().bold().set();
            int at = 1;
            for (List<String> row : table.rows()) {
                row(sheet, at++, row);
            }
            sheet.freezePane(0, 1);
        } catch (IOException impossible) {
            throw new UncheckedIOException("Cannot write to memory.", impossible);
        }
        return bytes.toByteArray();
    }

    private static void row(Worksheet sheet, int at, List<String> row) {
        for (int column = 0; column < row.size(); column++) {
            String text = row.get(column);
            if (text.matches("\\d{1,9}")) {
                sheet.value(at, column, Integer.valueOf(text));
            } else {
                sheet.value(at, column, PlainText.of(text));
            }
        }
    }

    /// Without the characters that the name of a sheet may not have.
    private static String title(String title) {
        String plain = title.replaceAll("[\\[\\]:*?/\\\\'\\p{Cntrl}]", " ").strip();
        return plain.isEmpty() ? "-" : plain.substring(0, Math.min(LONGEST_TITLE, plain.length()));
    }
}
