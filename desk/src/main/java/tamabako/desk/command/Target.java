package tamabako.desk.command;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/// Where a command writes bytes: a file, or standard output for `-`.
final class Target {

    /// Something that writes bytes.
    interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private Target() {}

    /// Writes to `name`, whole or not at all: a file appears under its name only when it is
    /// finished.
    static void write(String name, Writing writing) throws IOException {
        if (name.equals("-")) {
            writing.to(System.out);
            System.out.flush();
            return;
        }
        Path file = Path.of(name).toAbsolutePath();
        Path unfinished = Files.createTempFile(file.getParent(), ".", ".unfinished");
        try {
            try (OutputStream out = Files.newOutputStream(unfinished)) {
                writing.to(out);
            }
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
