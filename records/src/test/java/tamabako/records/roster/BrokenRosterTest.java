package tamabako.records.roster;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tamabako.records.Group;
import tamabako.records.Pupil;
import tamabako.testkit.Golden;

/// Broken rosters of every sort, with what is told about each, in both languages.
class BrokenRosterTest {

    private static final Group TUESDAY = new Group("g1", "Tuesday", false);
    private static final Group THURSDAY = new Group("g2", "Thursday", false);

    private static final List<Pupil> BOOK =
            List.of(
                    pupil("p1", TUESDAY, "Aoi", "A-1"),
                    pupil("p2", TUESDAY, "Ben", ""),
                    pupil("p3", TUESDAY, "Ben", ""),
                    pupil("p4", THURSDAY, "Emi", "E-1"),
                    pupil("p5", THURSDAY, "Emi", "E-1"),
                    pupil("p6", THURSDAY, "Goro", ""));

    private static Pupil pupil(String id, Group group, String name, String rosterId) {
        return new Pupil(
                id,
                group.id(),
                name,
                Locale.ENGLISH,
                new tamabako.records.About("", java.util.Optional.empty(), "", rosterId),
                tamabako.records.Preferences.USUAL,
                false);
    }

    private static Map<String, byte[]> files() {
        Map<String, byte[]> files = new LinkedHashMap<>();
        text(files, "nothing", "");
        text(files, "blank lines", "\r\n\r\n ,, \r\n");
        text(files, "no heading for the name", "Aoi,Tuesday\nBen,Tuesday\n");
        text(files, "names only", "Aoi\nBen\n");
        text(files, "a heading twice", "name,group,氏名\nAoi,Tuesday,葵\n");
        text(files, "columns with no place", "name,group,phone,住所\nHana,Tuesday,1,2\n");
        text(files, "no name", "group,name\nTuesday,Hana\nTuesday,\nTuesday,  \n");
        text(files, "no group", "name\nHana\n");
        text(files, "odd years", "name,group,生年\nHana,Tuesday,20l7\nIvo,Tuesday,2030\n");
        text(files, "a whole date", "name,group,birthday\nHana,Tuesday,2017-05-04\n");
        text(files, "odd language", "name,group,language\nHana,Tuesday,Klingon\nIvo,Tuesday,日本語\n");
        text(
                files,
                "odd preferences",
                "name,group,no flashing,extra time,pace\nHana,Tuesday,maybe,301,fast\n");
        text(
                files,
                "an open quotation mark",
                "name,group\nHana,Tuesday\n\"Ivo,Tuesday\nJune,Tuesday\n");
        text(
                files,
                "a closed quotation mark",
                "name,group\nHana,Tuesday\n\"Ivo\" the great,Tuesday\n");
        text(files, "a comma too much", "name,group\nHana, Jr.,Tuesday\nIvo,Tuesday,,\n");
        text(files, "a long name", "name,group\n" + "Ha".repeat(40) + ",Tuesday\n");
        text(files, "a line break in a name", "name,group\n\"Ha\nna\",Tuesday\nIvo,Tuesday\n");
        text(files, "a lost letter", "name,group\nH\uFFFDna,Tuesday\n");
        text(files, "a mistake of the spreadsheet", "name,group\n#REF!,Tuesday\n");
        text(files, "one id for two", "roster id,name,group\nH-1,Hana,Tuesday\nH-1,Ivo,Tuesday\n");
        text(
                files,
                "one pupil twice",
                "name,group\nHana,Tuesday\nHana,Tuesday\nAoi,Tuesday\nＡｏｉ,Tuesday\n");
        text(files, "several in the book", "name,group\nBen,Tuesday\n");
        text(files, "an id that several have", "name,group,roster id\nEmi,Thursday,E-1\n");
        text(files, "a name of another group", "name,group\nGoro,Tuesday\n");
        files.put(
                "a letter of Western Europe",
                "name,group\nJosé,Tuesday\n".getBytes(StandardCharsets.ISO_8859_1));
        files.put(
                "an old spreadsheet",
                new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 0, 0});
        text(files, "a printed page", "%PDF-1.7\n");
        files.put(
                "a picture",
                new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13});
        files.put("a broken workbook", Sample.zip(Map.of("xl/workbook.xml", "<workbook>")));
        files.put("another zip", Sample.zip(Map.of("letter.txt", "Dear parents")));
        files.put("too long", new byte[6 * 1024 * 1024]);
        text(files, "too many lines", "name,group\n" + "Aoi,Tuesday\n".repeat(5_001));
        return files;
    }

    private static void text(Map<String, byte[]> files, String name, String text) {
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void everyBrokenFileIsToldWithPlaceReasonAndRemedy() {
        StringBuilder told = new StringBuilder();
        files().forEach((name, bytes) -> {
            told.append("== ").append(name).append('\n');
            for (Locale language : List.of(Locale.ENGLISH, Locale.JAPANESE)) {
                tell(RosterFile.read(bytes), RosterWords.of(language))
                        .forEach(line -> told.append(line).append('\n'));
            }
        });
        Golden.assertGolden("broken-rosters.txt", told.toString());
    }

    private static List<String> tell(Read read, RosterWords words) {
        return switch (read) {
            case Read.Unreadable(Told why) -> List.of(words.say(why));
            case Read.Roster roster -> {
                Plan plan = Planner.plan(List.of(TUESDAY, THURSDAY), BOOK, roster, Sample.WISHES);
                List<String> lines = new java.util.ArrayList<>();
                plan.wrong().forEach(one -> lines.add("- " + words.say(one)));
                plan.notices().forEach(one -> lines.add("i " + words.say(one)));
                lines.add("%d good".formatted(plan.steps().size()));
                yield lines;
            }
        };
    }
}
