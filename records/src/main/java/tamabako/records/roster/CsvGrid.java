package tamabako.records.roster;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/// Reads the cells of a text with commas, semicolons or tabs between them (RFC 4180).
final class CsvGrid {

    private static final List<Character> SEPARATORS = List.of(',', '\t', ';');

    /// So many lines are looked at to find out what stands between the cells.
    private static final int LOOKED_AT = 5;

    private CsvGrid() {}

    /// The cells of a text whose separator has to be found out.
    static Grid read(String text) {
        return read(text, separator(text));
    }

    /// The cells of a text with that sign between them.
    static Grid read(String text, char separator) {
        List<Grid.Line> lines = new ArrayList<>();
        int next = 1;
        try (CsvReader<CsvRecord> reader =
                CsvReader.builder()
                        .fieldSeparator(separator)
                        .allowUnclosedQuote(false)
                        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                        .ofCsvRecord(text)) {
            for (CsvRecord csv : reader) {
                int number = Math.toIntExact(csv.getStartingLineNumber());
                Grid.Line line = new Grid.Line(number, csv.getFields());
                next = number + 1 + breaks(csv);
                if (!line.isBlank()) {
                    lines.add(line);
                }
            }
        } catch (CsvParseException broken) {
            return new Grid(
                    lines, Optional.of(new Told(Place.line(next), new Remark.BrokenQuote())));
        } catch (IOException impossible) {
            throw new UncheckedIOException("A text is in memory.", impossible);
        }
        return new Grid(lines, Optional.empty());
    }

    private static int breaks(CsvRecord csv) {
        return (int)
                csv.getFields().stream()
                        .flatMapToInt(String::chars)
                        .filter(letter -> letter == '\n')
                        .count();
    }

    /// What stands between the cells: the sign that parts the headings into most known ones.
    private static char separator(String text) {
        List<String> lines = text.lines().filter(line -> !line.isBlank()).limit(LOOKED_AT).toList();
        return SEPARATORS.stream()
                .max(
                        Comparator.<Character>comparingLong(sign -> known(lines, sign))
                                .thenComparing(
                                        Comparator.comparingInt(SEPARATORS::indexOf).reversed()))
                .orElse(',');
    }

    private static long known(List<String> lines, char sign) {
        return lines.stream()
                .mapToLong(
                        line -> Headings.known(List.of(line.split(Pattern.quote("" + sign), -1))))
                .max()
                .orElse(0);
    }
}
