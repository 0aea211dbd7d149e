package tamabako.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/// Finds a password where it is said to be.
final class PasswordPlace {

    private PasswordPlace() {}

    static Optional<String> find(Database.Password password) {
        return switch (password) {
            case Database.Password.None() -> Optional.empty();
            case Database.Password.Variable(String name) ->
                    Optional.of(
                            Optional.ofNullable(System.getenv(name)).orElseThrow(() -> none(name)));
            case Database.Password.InFile(Path file) -> Optional.of(firstLine(file));
        };
    }

    private static String firstLine(Path file) {
        try (var lines = Files.lines(file)) {
            return lines.findFirst().orElseThrow(() -> none(file.toString()));
        } catch (IOException unreadable) {
            throw new RecordsFailure(new Reason.NoPassword(file.toString()), unreadable);
        }
    }

    private static RecordsFailure none(String place) {
        return new RecordsFailure(new Reason.NoPassword(place));
    }
}
