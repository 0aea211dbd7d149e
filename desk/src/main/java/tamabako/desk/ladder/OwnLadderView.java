package tamabako.desk.ladder;

import java.util.Arrays;
import java.util.List;

/// What the page shows on which a ladder of the teacher's own is written.
///
/// @param yaml the file as it stands
/// @param mistakes what has to be mended; none where nothing was sent yet
public record OwnLadderView(String yaml, List<MistakeView> mistakes) {

    private static final int FEWEST_LINES = 20;
    private static final int MOST_LINES = 40;

    public OwnLadderView {
        mistakes = List.copyOf(mistakes);
    }

    /// A mistake.
    ///
    /// @param line the line it stands on, from 1; 0 where none is to blame
    /// @param written what stands on that line
    /// @param message what is wrong and how to mend it
    public record MistakeView(int line, String written, String message) {

        static MistakeView of(int line, String yaml, String message) {
            List<String> lines = Arrays.asList(yaml.split("\\R", -1));
            boolean isThere = line >= 1 && line <= lines.size();
            return new MistakeView(line, isThere ? lines.get(line - 1) : "", message);
        }
    }

    /// How many lines of the file are seen at once.
    public int height() {
        return Math.clamp(yaml.lines().count() + 2, FEWEST_LINES, MOST_LINES);
    }
}
