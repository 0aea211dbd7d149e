package tamabako.records.roster;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/// The pupils in `users.csv` of a OneRoster package.
///
/// Kept are `sourcedId` as the roster id, `preferredGivenName` or else `givenName`, and the Japan
/// Profile's reading `metadata.jp.kanaGivenName`. The family name is kept only where two pupils of
/// one class have the same given name. A column that holds anything else is named and left out;
/// `enabledUser` and `status` say who is left out.
final class OneRosterUsers {

    private static final String KANA_GIVEN = "metadata.jp.kanaGivenName";
    private static final String KANA_FAMILY = "metadata.jp.kanaFamilyName";

    private static final Set<String> READ =
            Set.of(
                    "sourcedId",
                    "status",
                    "enabledUser",
                    "givenName",
                    "familyName",
                    "preferredGivenName",
                    KANA_GIVEN,
                    KANA_FAMILY);

    private final NamedRows users;
    private final List<Told> wrong;
    private final List<Told> notices;

    OneRosterUsers(NamedRows users, List<Told> wrong, List<Told> notices) {
        this.users = users;
        this.wrong = wrong;
        this.notices = notices;
    }

    List<Entry> entries(Map<String, Set<String>> groupsOf) {
        tellLeftOut();
        List<NamedRows.Row> pupils = new ArrayList<>();
        int nobodys = 0;
        for (NamedRows.Row row : users.rows()) {
            boolean isOff =
                    row.cell("enabledUser").equals("false")
                            || row.cell("status").equals("tobedeleted");
            if (!groupsOf.containsKey(row.cell("sourcedId"))) {
                nobodys++;
            } else if (isOff) {
                notices.add(new Told(row.place(), new Remark.SwitchedOff(given(row))));
            } else {
                pupils.add(row);
            }
        }
        if (nobodys > 0) {
            notices.add(new Told(Place.WHOLE, new Remark.InNoClass(nobodys)));
        }
        Map<String, Long> alike =
                pupils.stream()
                        .collect(
                                Collectors.groupingBy(
                                        row -> group(row, groupsOf) + "\n" + given(row),
                                        Collectors.counting()));
        List<Entry> entries = new ArrayList<>();
        for (NamedRows.Row row : pupils) {
            boolean isAlone = alike.getOrDefault(group(row, groupsOf) + "\n" + given(row), 1L) == 1;
            Entry entry = entry(row, group(row, groupsOf), isAlone);
            if (isRight(entry)) {
                entries.add(entry);
            }
            if (groupsOf.getOrDefault(row.cell("sourcedId"), Set.of()).size() > 1) {
                notices.add(
                        new Told(
                                row.place(),
                                new Remark.SeveralClasses(given(row), group(row, groupsOf))));
            }
        }
        return entries;
    }

    private boolean isRight(Entry entry) {
        List<Told> flaws =
                entry.cells().entrySet().stream()
                        .flatMap(cell -> Cells.flaw(cell.getKey(), cell.getValue()).stream())
                        .map(flaw -> new Told(entry.place(), flaw))
                        .toList();
        wrong.addAll(flaws);
        return flaws.isEmpty();
    }

    private void tellLeftOut() {
        for (String heading : users.headings()) {
            boolean isWritten = users.rows().stream().anyMatch(row -> !row.cell(heading).isEmpty());
            if (isWritten && !READ.contains(heading)) {
                notices.add(
                        new Told(Place.line(users.file(), 1), new Remark.ColumnLeftOut(heading)));
            }
        }
    }

    private static String group(NamedRows.Row row, Map<String, Set<String>> groupsOf) {
        return Stream.concat(
                        groupsOf.getOrDefault(row.cell("sourcedId"), Set.of()).stream(),
                        Stream.of(""))
                .findFirst()
                .orElse("");
    }

    private static String given(NamedRows.Row row) {
        String preferred = row.cell("preferredGivenName");
        return preferred.isEmpty() ? row.cell("givenName") : preferred;
    }

    private static Entry entry(NamedRows.Row row, String group, boolean isAlone) {
        Map<Field, String> cells = new HashMap<>();
        cells.put(Field.GIVEN_NAME, given(row));
        cells.put(Field.GIVEN_READING, row.cell(KANA_GIVEN));
        if (!isAlone) {
            cells.put(Field.FAMILY_NAME, row.cell("familyName"));
            cells.put(Field.FAMILY_READING, row.cell(KANA_FAMILY));
        }
        cells.put(Field.GROUP, group);
        cells.put(Field.ROSTER_ID, row.cell("sourcedId"));
        return Entry.of(row.place(), cells);
    }
}
