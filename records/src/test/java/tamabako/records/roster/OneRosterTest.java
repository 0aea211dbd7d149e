package tamabako.records.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/// A package as the CSV binding of OneRoster 1.2 has it. The headings of `users.csv` and the rules
/// of `manifest.csv` are those of the binding 1.2.1 (2023-08-22) and of its Japan Profile; those of
/// the other files are from memory of the same binding.
class OneRosterTest {

    private static Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(
                "manifest.csv",
                """
                propertyName,value
                manifest.version,1.0
                oneroster.version,1.2
                file.academicSessions,absent
                file.classes,bulk
                file.enrollments,bulk
                file.orgs,bulk
                file.users,bulk
                """);
        files.put(
                "orgs.csv",
                """
                sourcedId,status,dateLastModified,name,type,identifier,parentSourcedId
                o1,,,Port Linnet East,school,,
                o2,,,Port Linnet West,school,,
                """);
        files.put(
                "classes.csv",
                """
                sourcedId,status,dateLastModified,title,grades,courseSourcedId,classCode,classType,location,schoolSourcedId,termSourcedIds,subjects,subjectCodes,periods
                c1,,,Abacus,,k1,,scheduled,,o1,t1,,,
                c2,,,Abacus,,k1,,scheduled,,o2,t1,,,
                c3,,,"5, morning",,k2,,homeroom,,o1,t1,,,
                """);
        files.put(
                "users.csv",
                """
                sourcedId,status,dateLastModified,enabledUser,username,userIds,givenName,familyName,middleName,identifier,email,sms,phone,agentSourcedIds,grades,password,userMasterIdentifier,resourceSourcedIds,preferredGivenName,preferredMiddleName,preferredFamilyName,primaryOrgSourcedId,pronouns,metadata.jp.kanaGivenName,metadata.jp.kanaFamilyName,metadata.jp.kanaMiddleName,metadata.jp.homeClass
                u1,,,true,aoi1,,葵,佐藤,,,aoi@example.org,,,,05,,,,,,,o1,,アオイ,サトウ,,c3
                u2,,,true,aoi2,,葵,鈴木,,,,,,,05,,,,,,,o1,,アオイ,スズキ,,
                u3,,,true,ben,,Benjamin,Brook,,,,,0123,,05,,,,Ben,,,o2,,,,,
                u4,,,false,off,,Mirek,Moss,,,,,,,05,,,,,,,o2,,,,,
                u5,,,true,teacher,,Noor,North,,,,,,,,,,,,,,o1,,,,,
                """);
        files.put(
                "enrollments.csv",
                """
                sourcedId,status,dateLastModified,classSourcedId,schoolSourcedId,userSourcedId,role,primary,beginDate,endDate
                e1,,,c1,o1,u1,student,,,
                e2,,,c1,o1,u2,student,,,
                e3,,,c2,o2,u3,student,,,
                e4,,,c2,o2,u4,student,,,
                e5,,,c1,o1,u5,teacher,true,,
                e6,,,c3,o1,u1,student,,,
                e7,,,c9,o1,u2,student,,,
                e8,,,c1,o1,u9,student,,,
                """);
        return files;
    }

    private static Read read(Map<String, String> files) {
        return RosterFile.read(Sample.zip(files));
    }

    private static List<String> said(List<Told> told) {
        RosterWords words = RosterWords.of(Locale.ENGLISH);
        return told.stream().map(words::say).toList();
    }

    @Test
    void pupilsOfClassesBecomePupilsOfGroups() {
        Read.Roster roster = Sample.roster(Sample.zip(files()));
        assertThat(roster.kind()).isEqualTo(Read.Kind.ONE_ROSTER);
        Plan plan = Planner.plan(List.of(), List.of(), roster, Sample.WISHES);
        assertThat(plan.added())
                .extracting(
                        step -> step.group(),
                        step -> step.pupil().name(),
                        step -> step.pupil().about().kana(),
                        step -> step.pupil().about().rosterId())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "Abacus (Port Linnet East)", "佐藤 葵", "サトウ アオイ", "u1"),
                        org.assertj.core.groups.Tuple.tuple(
                                "Abacus (Port Linnet East)", "鈴木 葵", "スズキ アオイ", "u2"),
                        org.assertj.core.groups.Tuple.tuple(
                                "Abacus (Port Linnet West)", "Ben", "", "u3"));
        assertThat(said(plan.wrong()))
                .containsExactly(
                        "enrollments.csv, line 8: There is no class c9 in the package. The line is left out.",
                        "enrollments.csv, line 9: There is no user u9 in the package. The line is left out.");
        assertThat(said(plan.notices()))
                .anyMatch(line -> line.contains("\"email\" is left out"))
                .anyMatch(line -> line.contains("\"phone\" is left out"))
                .anyMatch(line -> line.contains("Mirek is switched off"))
                .anyMatch(line -> line.contains("Abacus (Port Linnet East) is taken"))
                .contains("People who are no pupil of any class and are left out: 1.")
                .noneMatch(line -> line.contains("aoi@example.org"));
    }

    @Test
    void foldersInTheZipAndVersion11MakeNoDifference() {
        Map<String, String> inFolder = new LinkedHashMap<>();
        files().forEach((name, text) ->
                inFolder.put("../export/" + name, text.replace("version,1.2", "version,1.1")));
        assertThat(read(inFolder)).isEqualTo(read(files()));
    }

    @Test
    void aPackageThatCannotBeReadSaysWhy() {
        assertThat(changed("manifest.csv", "oneroster.version,1.2", "oneroster.version,2.0"))
                .isEqualTo(
                        "manifest.csv: The package says it is OneRoster 2.0. Versions 1.1 and 1.2 are read. Export it in one of these.");
        assertThat(changed("manifest.csv", "users,bulk", "users,delta"))
                .isEqualTo("users.csv holds changes only (delta). Export the whole list (bulk).");
        assertThat(changed("classes.csv", "title", "Title"))
                .isEqualTo(
                        "classes.csv, line 1: There is no column \"title\", which OneRoster requires. Export it again.");
        Map<String, String> files = files();
        files.remove("enrollments.csv");
        assertThat(why(read(files))).startsWith("The package has no enrollments.csv.");
    }

    private static String changed(String file, String before, String after) {
        Map<String, String> files = files();
        files.computeIfPresent(file, (_, text) -> text.replace(before, after));
        return why(read(files));
    }

    private static String why(Read read) {
        return switch (read) {
            case Read.Unreadable(Told why) -> RosterWords.of(Locale.ENGLISH).say(why);
            case Read.Roster _ -> "It was read.";
        };
    }
}
