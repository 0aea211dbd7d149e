package tamabako.desk.opening;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/// A folder that only its owner can read: it holds what children did.
public final class PrivateFolder {

    private PrivateFolder() {}

    /// Makes the folder where it is missing. One that is there is left as it is; one that cannot be
    /// made is left to the class book to tell.
    public static void make(Path folder) {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        try {
            if (posix && !Files.exists(folder)) {
                Files.createDirectories(
                        folder,
                        PosixFilePermissions.asFileAttribute(
                                PosixFilePermissions.fromString("rwx------")));
            }
        } catch (IOException untold) {
            // Opening the class book fails next, and says which folder it is.
        }
    }
}
