package tamabako.problems.grade.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/// The texts of the ladder files that are shipped, for reading and for copying.
public final class LadderTexts {

    private static final List<String> NAMES =
            List.of(
                    "first-steps",
                    "abacus-one-sheet",
                    "dan-six-sections",
                    "mental-one-sheet",
                    "abacus-by-sections",
                    "mental-dan-by-sections",
                    "mental-row-tables");

    private LadderTexts() {}

    /// The names of all ladders that are shipped, in the order in which they are offered.
    public static List<String> names() {
        return NAMES;
    }

    /// The name of the file of a shipped ladder.
    public static String fileName(String name) {
        return name + ".yaml";
    }

    /// The text of the file of a shipped ladder.
    ///
    /// @param name one of [#names()]
    public static String text(String name) {
        String place = "/tamabako/problems/grades/" + fileName(name);
        try (InputStream stream = LadderTexts.class.getResourceAsStream(place)) {
            if (stream == null) {
                throw new IllegalArgumentException("No ladder " + name + " is shipped.");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException("Cannot read " + place + ".", failed);
        }
    }
}
