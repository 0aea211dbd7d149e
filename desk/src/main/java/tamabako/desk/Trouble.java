package tamabako.desk;

import java.nio.file.NoSuchFileException;

/// Why a command could not run, in a sentence instead of a stack trace.
final class Trouble {

    private Trouble() {}

    static String of(Exception failed) {
        return switch (failed) {
            case NoSuchFileException missing ->
                    "There is no file "
                            + missing.getFile()
                            + ". Check the name, or use - for input.";
            default -> {
                String message = failed.getMessage();
                yield message == null ? failed.getClass().getSimpleName() : message;
            }
        };
    }
}
