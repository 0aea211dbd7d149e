package tamabako.records.roster;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/// Reads the cells of a workbook: the first of its sheets whose headings name pupils.
final class XlsxGrid {

    private static final int LOOKED_AT = 5;

    private XlsxGrid() {}

    /// The cells; empty where it is no workbook that can be read.
    @SuppressWarnings("CatchingUnchecked") // a broken file makes the library throw anything
    static Optional<Grid> read(byte[] bytes) {
        try (ReadableWorkbook workbook =
                new ReadableWorkbook(
                        new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
            List<Grid> grids = new ArrayList<>();
            for (Sheet sheet : workbook.getSheets().toList()) {
                Grid grid = new Grid(lines(sheet), Optional.empty());
                if (grid.lines().stream()
                        .limit(LOOKED_AT)
                        .anyMatch(line -> Headings.nameSomebody(line.cells()))) {
                    return Optional.of(grid);
                }
                grids.add(grid);
            }
            return grids.stream()
                    .filter(grid -> !grid.lines().isEmpty())
                    .findFirst()
                    .or(() -> grids.stream().findFirst());
        } catch (IOException | RuntimeException broken) {
            return Optional.empty();
        }
    }

    private static List<Grid.Line> lines(Sheet sheet) throws IOException {
        try (Stream<Row> rows = sheet.openStream()) {
            return rows.map(row -> new Grid.Line(row.getRowNum(), cells(row)))
                    .filter(line -> !line.isBlank())
                    .toList();
        }
    }

    private static List<String> cells(Row row) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < row.getCellCount(); column++) {
            cells.add(row.getOptionalCell(column).map(XlsxGrid::text).orElse(""));
        }
        return cells;
    }

    private static String text(Cell cell) {
        if (cell.getType() == CellType.NUMBER && cell.getValue() instanceof BigDecimal number) {
            return isDate(cell)
                    ? cell.asDate().toLocalDate().toString()
                    : number.stripTrailingZeros().toPlainString();
        }
        String text = cell.getText();
        return text == null ? "" : text;
    }

    /// Spreadsheets keep dates as numbers that are shown in a form with a year in it.
    private static boolean isDate(Cell cell) {
        String form = cell.getDataFormatString();
        Integer number = cell.getDataFormatId();
        boolean isBuiltIn = number != null && ((number >= 14 && number <= 17) || number == 22);
        return isBuiltIn || (form != null && form.matches("(?i).*[yge].*[md].*|.*[md].*[y].*"));
    }
}
