package tamabako.problems.grade.file;

import java.util.List;
import tamabako.problems.grade.Ladder;

/// What became of reading a ladder file.
public sealed interface LadderFile {

    /// The file is in order.
    record Read(Ladder ladder) implements LadderFile {}

    /// Something has to be mended; all mistakes of the file in the order of its lines.
    record Mistaken(List<Mistake> mistakes) implements LadderFile {
        public Mistaken {
            mistakes = List.copyOf(mistakes);
        }
    }

    /// Reads the text of a file.
    ///
    /// @param fileName the name that messages call it by
    static LadderFile read(String fileName, String yaml) {
        return LadderReader.read(fileName, yaml);
    }
}
