package tamabako.desk.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/// The table in docs/accounts.md of OWASP ASVS 5.0.0 names only tests that are there, and leaves
/// none of the items out that this program holds itself to.
class AsvsTableTest {

    private static final Path TABLE = Path.of("../docs/accounts.md");
    private static final Pattern ROW =
            Pattern.compile("\\| (V\\d+\\.\\d+\\.\\d+) \\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\|");
    private static final Pattern TEST = Pattern.compile("`([A-Z]\\w+)\\.(\\w+)`");

    /// Passwords, sign-ins, cookies, headers, forms, roles, hashes, chance and logs; rooms and
    /// imports.
    private static final List<String> ITEMS =
            List.of(
                    "V1.2.1", "V1.2.10", "V1.5.1", "V2.2.2", "V2.3.1", "V2.3.3", "V2.4.1", "V2.4.2",
                    "V5.2.3", "V5.3.3", "V8.2.2", "V8.2.3", "V3.3.1", "V3.3.2", "V3.3.3", "V3.3.4",
                    "V3.4.2", "V3.4.3", "V3.4.4", "V3.4.5", "V3.4.6", "V3.5.1", "V3.5.3", "V6.1.1",
                    "V6.1.2", "V6.1.3", "V6.2.1", "V6.2.2", "V6.2.3", "V6.2.4", "V6.2.5", "V6.2.6",
                    "V6.2.7", "V6.2.8", "V6.2.9", "V6.2.10", "V6.2.11", "V6.3.1", "V6.3.2",
                    "V6.3.8", "V6.4.1", "V6.4.2", "V6.4.3", "V6.4.6", "V7.1.1", "V7.1.2", "V7.2.1",
                    "V7.2.2", "V7.2.3", "V7.2.4", "V7.3.1", "V7.3.2", "V7.4.1", "V7.4.2", "V7.4.3",
                    "V7.4.4", "V7.4.5", "V7.5.2", "V8.1.1", "V8.2.1", "V8.3.1", "V8.3.2", "V11.4.2",
                    "V11.5.1", "V12.2.1", "V14.2.1", "V14.3.2", "V16.2.5", "V16.3.1", "V16.3.2");

    private record Row(String item, String tests) {}

    private static List<Row> rows() throws IOException {
        return ROW.matcher(Files.readString(TABLE))
                .results()
                .map(row -> new Row(row.group(1), row.group(4)))
                .toList();
    }

    @Test
    void everyItemHasARowAndEveryRowATestOrTheReasonForNone() throws IOException {
        List<Row> rows = rows();
        assertThat(rows).extracting(Row::item).doesNotHaveDuplicates().containsAll(ITEMS);
        assertThat(rows)
                .allSatisfy(row ->
                        assertThat(
                                        TEST.matcher(row.tests()).find()
                                                || row.tests().startsWith("No test:"))
                                .as(row.item())
                                .isTrue());
    }

    @Test
    void everyTestThatTheTableNamesIsThere() throws IOException {
        Set<String> missing = new TreeSet<>();
        List<String> named = new ArrayList<>();
        for (Row row : rows()) {
            for (MatchResult test : TEST.matcher(row.tests()).results().toList()) {
                named.add(test.group());
                if (!isThere(test.group(1), test.group(2))) {
                    missing.add(row.item() + " " + test.group());
                }
            }
        }
        assertThat(named).hasSizeGreaterThan(40);
        assertThat(missing).isEmpty();
    }

    /// Whether some module has a test class of that name with a test of that name.
    private static boolean isThere(String type, String method) throws IOException {
        for (String module : List.of("desk", "records", "problems", "paper")) {
            for (Path file : named(type + ".java", Path.of("..", module, "src", "test", "java"))) {
                String text = Files.readString(file);
                int at = text.indexOf("void " + method + "(");
                int before = Math.max(0, text.lastIndexOf("\n    }\n", at));
                if (at >= 0 && text.substring(before, at).contains("Test\n")) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<Path> named(String name, Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.getFileName().toString().equals(name)).toList();
        }
    }
}
