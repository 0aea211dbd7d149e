package tamabako.records.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// Files of every kind are read as the same pupils.
class RosterFileTest {

    @TempDir Path folder;

    private static final String ENGLISH =
            """
            Group,Name,Reading,Birth year,Grade
            Tuesday,Aoi,あおい,2017,6級
            Tuesday,"Ben, Jr.",,2016,
            """;

    private static final String JAPANESE =
            """
            氏名\tふりがな\tクラス\t級\t生年月日
            葵\tあおい\t火曜\t６級\t平成29年5月4日

            表参道\tおもてさんどう\t火曜\t\tH28
            """;

    private static List<String> names(Read.Roster roster) {
        return roster.entries().stream().map(entry -> entry.cells().get(Field.NAME)).toList();
    }

    @Test
    void columnsComeInAnyOrderUnderEnglishOrJapaneseHeadings() {
        Read.Roster english = Sample.roster(ENGLISH);
        assertThat(english.kind()).isEqualTo(Read.Kind.CSV_UTF8);
        assertThat(names(english)).containsExactly("Aoi", "Ben, Jr.");
        assertThat(english.entries().getFirst().cells())
                .isEqualTo(
                        Map.of(
                                Field.GROUP, "Tuesday",
                                Field.NAME, "Aoi",
                                Field.READING, "あおい",
                                Field.BORN, "2017",
                                Field.GRADE, "6級"));
        assertThat(english.entries().get(1).place().line()).isEqualTo(3);
        assertThat(english.wrong()).isEmpty();
        assertThat(english.notices()).isEmpty();

        Read.Roster japanese = Sample.roster(JAPANESE);
        assertThat(names(japanese)).containsExactly("葵", "表参道");
        assertThat(japanese.entries().get(1).place().line()).isEqualTo(4);
        assertThat(japanese.entries().getFirst().cell(Field.BORN)).contains("平成29年5月4日");
    }

    @Test
    void theEncodingIsFoundOut() {
        // 表 holds a backslash in Shift_JIS, the usual stumbling block.
        assertThat(names(Sample.roster(Sample.shiftJis(JAPANESE)))).containsExactly("葵", "表参道");
        assertThat(Sample.roster(Sample.shiftJis(JAPANESE)).kind())
                .isEqualTo(Read.Kind.CSV_SHIFT_JIS);
        for (var charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE)) {
            byte[] marked = ("\uFEFF" + JAPANESE).getBytes(charset);
            assertThat(names(Sample.roster(marked))).containsExactly("葵", "表参道");
        }
        // Half-width katakana, circled figures and a wave dash as Japanese spreadsheets write them.
        assertThat(names(Sample.roster(Sample.shiftJis("名前\nｱｵｲ①～髙﨑\n"))))
                .containsExactly("ｱｵｲ①～髙﨑");
    }

    @ParameterizedTest
    @ValueSource(strings = {";", ",", "\t"})
    void theSeparatorIsFoundOut(String separator) {
        String text = "name;group;grade\n\"Aoi; 葵\";Tuesday, or Friday;x\n";
        Read.Roster roster =
                Sample.roster(
                        separator.equals(",")
                                ? "name,group,grade\n\"Aoi, 葵\",Tuesday; or Friday,x\n"
                                : text.replace(";", separator).replace("Aoi\t", "Aoi;"));
        assertThat(names(roster).getFirst()).startsWith("Aoi").endsWith(" 葵");
        assertThat(roster.entries().getFirst().cell(Field.GRADE)).contains("x");
    }

    @Test
    void aWorkbookIsReadFromTheSheetThatNamesPupils() {
        byte[] bytes =
                Sample.xlsx(
                        List.of(
                                List.of("火曜日の教室", "", "", ""),
                                List.of("名簿番号", "名前", "生年月日", "グループ"),
                                List.of(17, "葵", LocalDate.of(2017, 5, 4), "火曜"),
                                List.of(18.0, "弁", 2016, "火曜")));

        Read.Roster roster = Sample.roster(bytes);

        assertThat(roster.kind()).isEqualTo(Read.Kind.XLSX);
        assertThat(roster.entries())
                .extracting(entry -> entry.cells().get(Field.ROSTER_ID))
                .containsExactly("17", "18");
        assertThat(roster.entries())
                .extracting(entry -> entry.cells().get(Field.BORN))
                .containsExactly("2017-05-04", "2016");
        assertThat(roster.entries().getFirst().place().line()).isEqualTo(3);
    }

    @Test
    void familyAndGivenNamesAreJoinedAsTheirLanguageSaysThem() {
        Read.Roster roster = Sample.roster("姓,名,せい,めい,組\n佐藤,葵,さとう,あおい,火曜\nSmith,Ben,,,火曜\n");
        assertThat(roster.entries())
                .extracting(entry -> new CellReading(entry, Sample.WISHES).name())
                .containsExactly("佐藤 葵", "Ben Smith");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    2017 | 2017
                    ２０１７年 | 2017
                    2017年生まれ | 2017
                    2017-05-04 | 2017
                    2017/5/4 | 2017
                    2017年5月4日 | 2017
                    4.5.2017 | 2017
                    20170504 | 2017
                    平成29年 | 2017
                    平成２９ | 2017
                    H29.5.4 | 2017
                    h29 | 2017
                    令和元年 | 2019
                    R1 | 2019
                    昭和64年1月7日 | 1989
                    S39 | 1964
                    大正15 | 1926
                    1899 |
                    2027 |
                    R99 |
                    17 |
                    last year |
                    2017x |
                    """)
    void yearsAreReadAsPeopleWriteThem(String written, Integer year) {
        // The first years of the eras (1868, 1912, 1926, 1989, 2019) are from memory.
        assertThat(Cells.born(written, Sample.WISHES.thisYear()).map(one -> one.year().getValue()))
                .isEqualTo(Optional.ofNullable(year));
    }

    @Test
    void aWorkbookThatAsksForFilesOfTheComputerGetsNone() throws IOException {
        byte[] workbook = Sample.xlsx(List.of(List.of("name"), List.of("Aoi")));
        assertThat(names(Sample.roster(with("Aoi", "Ben", workbook)))).containsExactly("Ben");
        Path secret = Files.writeString(folder.resolve("secret.txt"), "harbour-7431");
        byte[] asking =
                with(
                        "Aoi",
                        "&secret;",
                        with(
                                "<sst ",
                                "<!DOCTYPE sst [<!ENTITY secret SYSTEM \"%s\">]><sst "
                                        .formatted(secret.toUri()),
                                workbook));
        assertThat(RosterFile.read(asking).toString()).doesNotContain("harbour");
    }

    /// The same workbook with another text in its texts.
    private static byte[] with(String before, String after, byte[] workbook) throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipFile zip = ZipFile.builder().setByteArray(workbook).get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                try (InputStream in = zip.getInputStream(entry)) {
                    String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                    boolean isTexts = entry.getName().equals("xl/sharedStrings.xml");
                    files.put(entry.getName(), isTexts ? text.replace(before, after) : text);
                }
            }
        }
        return Sample.zip(files);
    }

    @Test
    void aZipThatUnpacksIntoTooMuchIsRefused() {
        byte[] bomb = Sample.zip(Map.of("xl/workbook.xml", "0".repeat(70_000_000)));
        assertThat(bomb).hasSizeLessThan(1_000_000);
        assertThat(RosterFile.read(bomb)).isEqualTo(Read.unreadable(new Remark.NoRoster()));
    }
}
