package tamabako.records.roster;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import tamabako.records.ClassBook;
import tamabako.records.Group;
import tamabako.records.Pupil;
import tamabako.records.Result;

/// Writes lists from the class book for spreadsheets, as CSV (RFC 4180, UTF-8 with its mark, so
/// that spreadsheets know it) or XLSX. No cell begins as a formula does.
public final class RosterOut {

    /// The kinds of file.
    public enum Form {
        CSV,
        XLSX
    }

    private RosterOut() {}

    /// Every pupil with all that a roster can tell; read in again, it changes nothing.
    ///
    /// @param language the language of the headings
    public static byte[] pupils(ClassBook book, Form form, Locale language) {
        RosterWords words = RosterWords.of(language);
        Map<String, String> groups = groups(book);
        List<List<String>> rows = new ArrayList<>();
        rows.add(Facts.COLUMNS.stream().map(words::say).toList());
        for (Pupil pupil : inGroups(book, groups)) {
            String group = groups.getOrDefault(pupil.groupId(), "");
            rows.add(
                    Facts.COLUMNS.stream()
                            .map(field -> shown(words, field, Facts.of(field, pupil, group)))
                            .toList());
        }
        return write(rows, form);
    }

    /// Every result of an exam or contest, with whose it is.
    ///
    /// @param language the language of the headings
    public static byte[] results(ClassBook book, Form form, Locale language) {
        RosterWords words = RosterWords.of(language);
        Map<String, String> groups = groups(book);
        List<List<String>> rows = new ArrayList<>();
        rows.add(
                List.of(
                        words.say(Field.GROUP),
                        words.say(Field.NAME),
                        words.say(Field.ROSTER_ID),
                        words.word("result.kind"),
                        words.word("result.name"),
                        words.word("result.day"),
                        words.word("result.points"),
                        words.word("result.most"),
                        words.word("result.outcome")));
        for (Pupil pupil : inGroups(book, groups)) {
            for (Result result : book.results().of(pupil.id())) {
                rows.add(
                        List.of(
                                groups.getOrDefault(pupil.groupId(), ""),
                                pupil.name(),
                                pupil.about().rosterId(),
                                words.word(
                                        switch (result.kind()) {
                                            case EXAM -> "result.exam";
                                            case CONTEST -> "result.contest";
                                        }),
                                result.name(),
                                result.day().toString(),
                                result.score().map(score -> "" + score.points()).orElse(""),
                                result.score().map(score -> "" + score.most()).orElse(""),
                                result.outcome()));
            }
        }
        return write(rows, form);
    }

    private static String shown(RosterWords words, Field field, String value) {
        return field == Field.NO_FLASHING ? words.value(field, value) : value;
    }

    private static Map<String, String> groups(ClassBook book) {
        Map<String, String> groups = new HashMap<>();
        for (Group group : book.groups().all()) {
            groups.put(group.id(), group.name());
        }
        return groups;
    }

    private static List<Pupil> inGroups(ClassBook book, Map<String, String> groups) {
        return book.pupils().all().stream()
                .sorted(
                        Comparator.<Pupil, String>comparing(
                                        pupil -> groups.getOrDefault(pupil.groupId(), ""))
                                .thenComparing(Pupil.BY_NAME))
                .toList();
    }

    private static byte[] write(List<List<String>> rows, Form form) {
        List<List<String>> guarded =
                rows.stream().map(row -> row.stream().map(FormulaGuard::on).toList()).toList();
        try {
            return switch (form) {
                case CSV -> csv(guarded);
                case XLSX -> xlsx(guarded);
            };
        } catch (IOException impossible) {
            throw new UncheckedIOException("Cannot write to memory.", impossible);
        }
    }

    private static byte[] csv(List<List<String>> rows) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write("\uFEFF".getBytes(StandardCharsets.UTF_8));
        try (CsvWriter csv =
                CsvWriter.builder()
                        .lineDelimiter(LineDelimiter.CRLF)
                        .build(out, StandardCharsets.UTF_8)) {
            rows.forEach(csv::writeRecord);
        }
        return out.toByteArray();
    }

    private static byte[] xlsx(List<List<String>> rows) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "tamabako", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("1");
            for (int line = 0; line < rows.size(); line++) {
                for (int column = 0; column < rows.get(line).size(); column++) {
                    if (!rows.get(line).get(column).isEmpty()) {
                        sheet.value(line, column, rows.get(line).get(column));
                    }
                }
            }
            sheet.range(0, 0, 0, rows.getFirst().size() - 1).style().bold().set();
            sheet.freezePane(0, 1);
        }
        return out.toByteArray();
    }
}
