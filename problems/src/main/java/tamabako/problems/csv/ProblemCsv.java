package tamabako.problems.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tamabako.problems.Problem;
import tamabako.problems.ProblemFile;
import tamabako.problems.ProblemFile.Fault;
import tamabako.problems.Unreadable;
import tamabako.problems.Unreadable.Reason;

/// Reads and writes problems as CSV. The format is told in docs/formats.md.
public final class ProblemCsv {

    private ProblemCsv() {}

    /// Every problem of a CSV text; a line that cannot be read is a fault, and the rest is read. A
    /// problem without a name gets its number.
    public static ProblemFile read(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<Problem> problems = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        List<String> columns = List.of();
        int line = 1;
        try {
            for (CsvRecord record : lines(plain)) {
                line = (int) record.getStartingLineNumber();
                if (columns.isEmpty()) {
                    columns = CsvCells.columns(record.getFields());
                } else {
                    read(line, CsvCells.named(columns, record), problems, faults);
                }
            }
        } catch (Unreadable heading) {
            faults.add(new Fault("", line, heading));
        } catch (CsvParseException _) {
            faults.add(new Fault("", line + 1, new Unreadable(new Reason.NotCsv())));
        }
        return new ProblemFile(problems, faults);
    }

    private static CsvReader<CsvRecord> lines(String text) {
        return CsvReader.builder()
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .ofCsvRecord(text);
    }

    private static void read(
            int line, Map<String, String> cells, List<Problem> problems, List<Fault> faults) {
        try {
            Problem problem = CsvCells.problem(cells);
            String number = Integer.toString(problems.size() + faults.size() + 1);
            problems.add(problem.id().isEmpty() ? problem.withId(number) : problem);
        } catch (Unreadable fault) {
            faults.add(new Fault("", line, fault));
        }
    }

    /// The problems as CSV, the names of its columns first; it has only the columns that a problem
    /// needs.
    public static String write(List<Problem> problems) {
        List<Map<String, String>> lines = problems.stream().map(CsvCells::of).toList();
        List<String> columns = CsvCells.used(lines);
        StringWriter text = new StringWriter();
        CsvWriter csv = CsvWriter.builder().bufferSize(0).build(text);
        csv.writeRecord(columns);
        for (Map<String, String> line : lines) {
            csv.writeRecord(columns.stream().map(name -> line.getOrDefault(name, "")).toList());
        }
        return text.toString();
    }
}
