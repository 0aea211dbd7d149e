package tamabako.records.roster;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/// Reads a package of 1EdTech OneRoster 1.2 in its CSV binding (1.2.1 of 2023-08-22), and of 1.1,
/// whose columns are the same as far as they are read here.
///
/// Read are, by the names of the specification: in `manifest.csv` the properties
/// `oneroster.version` and `file.users`, `file.classes`, `file.enrollments`; in `orgs.csv`
/// `sourcedId`, `name`; in `classes.csv` `sourcedId`, `title`, `schoolSourcedId`; in
/// `enrollments.csv` `classSourcedId`, `userSourcedId`, `role`, `status`; in `users.csv` what
/// [OneRosterUsers] says. A pupil is whoever is enrolled in a class with the role `student`.
/// Everything else is left out. Only whole lists (`bulk`) are read.
final class OneRoster {

    private static final Map<String, List<String>> NEEDED =
            Map.of(
                    "classes.csv", List.of("sourcedId", "title", "schoolSourcedId"),
                    "users.csv", List.of("sourcedId", "givenName", "familyName"),
                    "enrollments.csv", List.of("classSourcedId", "userSourcedId", "role"));

    private final Map<String, NamedRows> files;
    private final List<Told> wrong = new ArrayList<>();
    private final List<Told> notices = new ArrayList<>();

    private OneRoster(Map<String, NamedRows> files) {
        this.files = files;
    }

    static Read read(Map<String, byte[]> bytes) {
        Map<String, NamedRows> files = new LinkedHashMap<>();
        for (String name :
                List.of(
                        "manifest.csv",
                        "orgs.csv",
                        "classes.csv",
                        "users.csv",
                        "enrollments.csv")) {
            Optional<NamedRows> rows =
                    Optional.ofNullable(bytes.get(name))
                            .flatMap(file -> NamedRows.read(name, file));
            rows.ifPresent(read -> files.put(name, read));
        }
        OneRoster roster = new OneRoster(files);
        return roster.stopped().<Read>map(Read.Unreadable::new).orElseGet(roster::roster);
    }

    private Optional<Told> stopped() {
        return manifest()
                .or(() -> {
                    for (String name : List.of("classes.csv", "users.csv", "enrollments.csv")) {
                        NamedRows rows = files.get(name);
                        if (rows == null) {
                            return Optional.of(new Told(Place.WHOLE, new Remark.FileMissing(name)));
                        }
                        Optional<String> lacking = rows.lacks(NEEDED.getOrDefault(name, List.of()));
                        if (lacking.isPresent()) {
                            return Optional.of(
                                    new Told(
                                            Place.line(name, 1),
                                            new Remark.HeadingMissing(lacking.get())));
                        }
                        if (rows.rows().size() > RosterFile.MOST_LINES) {
                            return Optional.of(
                                    new Told(
                                            Place.line(name, 1),
                                            new Remark.TooManyLines(RosterFile.MOST_LINES)));
                        }
                    }
                    return Optional.empty();
                });
    }

    private Optional<Told> manifest() {
        NamedRows manifest = files.get("manifest.csv");
        if (manifest == null) {
            return Optional.of(new Told(Place.WHOLE, new Remark.FileMissing("manifest.csv")));
        }
        Map<String, String> properties = new LinkedHashMap<>();
        manifest.rows().forEach(row -> properties.put(row.cell("propertyName"), row.cell("value")));
        String version = properties.getOrDefault("oneroster.version", "?");
        if (!Set.of("1.1", "1.2").contains(version)) {
            return Optional.of(
                    new Told(
                            new Place("manifest.csv", 0, 0, ""), new Remark.OtherVersion(version)));
        }
        return List.of("classes", "users", "enrollments").stream()
                .filter(name -> properties.getOrDefault("file." + name, "").equals("delta"))
                .findFirst()
                .map(name -> new Told(Place.WHOLE, new Remark.OnlyChanges(name + ".csv")));
    }

    private Read roster() {
        Map<String, String> classes = classes();
        Map<String, Set<String>> classesOf = enrolled(classes);
        OneRosterUsers users = new OneRosterUsers(file("users.csv"), wrong, notices);
        List<Entry> entries = users.entries(classesOf);
        Set<String> known =
                file("users.csv").rows().stream()
                        .map(row -> row.cell("sourcedId"))
                        .collect(Collectors.toSet());
        for (NamedRows.Row row : file("enrollments.csv").rows()) {
            if (isPupil(row) && !known.contains(row.cell("userSourcedId"))) {
                wrong.add(
                        new Told(
                                row.place(),
                                new Remark.NotThere("user", row.cell("userSourcedId"))));
            }
        }
        return new Read.Roster(Read.Kind.ONE_ROSTER, entries, wrong, notices);
    }

    private NamedRows file(String name) {
        return Optional.ofNullable(files.get(name))
                .orElseGet(() -> new NamedRows(name, List.of(), List.of()));
    }

    private static boolean isPupil(NamedRows.Row row) {
        return row.cell("role").equals("student") && !row.cell("status").equals("tobedeleted");
    }

    /// The names of the groups that the classes become, by the classes' identities; where two
    /// classes have one title, the name of the school goes with it.
    private Map<String, String> classes() {
        Map<String, String> schools = new LinkedHashMap<>();
        file("orgs.csv")
                .rows()
                .forEach(row -> schools.put(row.cell("sourcedId"), row.cell("name")));
        List<NamedRows.Row> rows = file("classes.csv").rows();
        Map<String, Long> titles =
                rows.stream()
                        .collect(
                                Collectors.groupingBy(
                                        row -> row.cell("title"), Collectors.counting()));
        Map<String, String> names = new LinkedHashMap<>();
        for (NamedRows.Row row : rows) {
            String title = row.cell("title");
            String school = schools.getOrDefault(row.cell("schoolSourcedId"), "");
            boolean isPlain = titles.getOrDefault(title, 1L) == 1 || school.isEmpty();
            names.put(row.cell("sourcedId"), isPlain ? title : title + " (" + school + ")");
        }
        return names;
    }

    /// The groups of each pupil, by the pupil's identity, in the order of the file.
    private Map<String, Set<String>> enrolled(Map<String, String> classes) {
        Map<String, Set<String>> groups = new LinkedHashMap<>();
        for (NamedRows.Row row : file("enrollments.csv").rows()) {
            if (!isPupil(row)) {
                continue;
            }
            String group = classes.get(row.cell("classSourcedId"));
            if (group == null) {
                wrong.add(
                        new Told(
                                row.place(),
                                new Remark.NotThere("class", row.cell("classSourcedId"))));
            } else {
                groups.computeIfAbsent(row.cell("userSourcedId"), _ -> new LinkedHashSet<>())
                        .add(group);
            }
        }
        return groups;
    }
}
