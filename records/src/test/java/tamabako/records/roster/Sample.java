package tamabako.records.roster;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Year;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/// Rosters for the tests.
final class Sample {

    static final Wishes WISHES = new Wishes("", Locale.ENGLISH, Year.of(2026));

    private Sample() {}

    static Read read(String text) {
        return RosterFile.read(text.getBytes(StandardCharsets.UTF_8));
    }

    static Read.Roster roster(String text) {
        return roster(text.getBytes(StandardCharsets.UTF_8));
    }

    static Read.Roster roster(byte[] bytes) {
        return switch (RosterFile.read(bytes)) {
            case Read.Roster roster -> roster;
            case Read.Unreadable(Told why) ->
                    throw new AssertionError(RosterWords.of(Locale.ENGLISH).say(why));
        };
    }

    static byte[] shiftJis(String text) {
        return text.getBytes(Charset.forName("windows-31j"));
    }

    static byte[] zip(Map<String, String> files) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /// A workbook whose cells are texts, numbers or days.
    static byte[] xlsx(List<List<Object>> rows) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "test", "1.0")) {
            workbook.newWorksheet("Read me").value(0, 0, "The pupils are on the next sheet.");
            Worksheet sheet = workbook.newWorksheet("名簿");
            for (int line = 0; line < rows.size(); line++) {
                for (int column = 0; column < rows.get(line).size(); column++) {
                    switch (rows.get(line).get(column)) {
                        case Number number -> sheet.value(line, column, number);
                        case java.time.LocalDate day -> {
                            sheet.value(line, column, day);
                            sheet.style(line, column).format("yyyy/mm/dd").set();
                        }
                        case Object text -> sheet.value(line, column, text.toString());
                    }
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }
}
