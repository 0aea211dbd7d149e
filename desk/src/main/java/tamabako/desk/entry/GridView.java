package tamabako.desk.entry;

import java.util.List;
import java.util.Optional;
import tamabako.records.Group;
import tamabako.records.Pupil;

/// What the grid shows: one line a pupil, one field an answer.
///
/// @param sheet the number of the sheet
/// @param title its title
/// @param isPaper whether it is a form of a paper
/// @param below whether some right answers are below zero, so that a minus sign has to be typed
/// @param strict whether commas are needed
/// @param group whose pupils they are
/// @param parts the sections of a paper, or the whole of a sheet
/// @param handed the day on which it was last handed out to the group, in words; blank for none
public record GridView(
        String sheet,
        String title,
        boolean isPaper,
        boolean below,
        boolean strict,
        Group group,
        List<Part> parts,
        List<Line> lines,
        String handed) {

    public GridView {
        parts = List.copyOf(parts);
        lines = List.copyOf(lines);
    }

    /// Problems that go together.
    ///
    /// @param name the name of the section; blank for the whole of a sheet
    /// @param from the place of its first problem on the sheet, from 0
    /// @param numbers the printed numbers
    /// @param problems each problem in one line
    public record Part(String name, int from, List<String> numbers, List<String> problems) {
        public Part {
            numbers = List.copyOf(numbers);
            problems = List.copyOf(problems);
        }
    }

    /// The line of one pupil.
    ///
    /// @param pupil whose it is
    /// @param work the identity of the work that is kept, or will be
    /// @param isOpen whether answers are typed in it
    /// @param isDraft whether something was typed that is not kept
    /// @param cells what stands in the fields, answer by answer
    /// @param took the time as typed
    /// @param kept the last work that is kept, if there is some
    /// @param fault what cannot be taken, and how to mend it
    public record Line(
            Pupil pupil,
            String work,
            boolean isOpen,
            boolean isDraft,
            List<Cell> cells,
            String took,
            Optional<Kept> kept,
            Optional<String> fault) {
        public Line {
            cells = List.copyOf(cells);
        }

        /// How many of the answers are right.
        public long right() {
            return cells.stream().filter(cell -> cell.mark().equals("right")).count();
        }
    }

    /// An answer and its mark, which is blank where nothing was typed.
    public record Cell(String written, String mark) {}

    /// Work that is kept.
    ///
    /// @param day when it was handed in, in words
    /// @param time how long it took, as typed; blank where it is not known
    public record Kept(String id, long right, int of, String day, String time) {}
}
