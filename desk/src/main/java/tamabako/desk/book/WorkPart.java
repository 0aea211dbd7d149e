package tamabako.desk.book;

import java.util.List;
import java.util.stream.IntStream;
import tamabako.desk.sheet.Shown;
import tamabako.problems.Problem;
import tamabako.problems.Sheet;
import tamabako.records.Handout;
import tamabako.records.Work;
import tamabako.records.export.PupilExport;

/// What one pupil was handed and what came of it.
///
/// @param handed sheets and papers handed out, the newest first
/// @param pieces work handed in, the newest first
/// @param more how many older pieces are not shown
public record WorkPart(List<Handed> handed, List<Piece> pieces, int more) {

    public WorkPart {
        handed = List.copyOf(handed);
        pieces = List.copyOf(pieces);
    }

    /// A sheet that was handed out.
    ///
    /// @param day in words
    /// @param isWorked whether work on it was handed in
    public record Handed(String sheet, String title, String day, boolean isWorked) {}

    /// A piece of work.
    ///
    /// @param day in words
    /// @param time how long it took, in words; blank where it is not known
    public record Piece(
            String id,
            String sheet,
            String title,
            String day,
            long right,
            String time,
            List<Answer> answers) {
        public Piece {
            answers = List.copyOf(answers);
        }

        /// Whether the time of any answer is known.
        public boolean hasTimes() {
            return answers.stream().anyMatch(answer -> !answer.time().isEmpty());
        }
    }

    /// An answer.
    ///
    /// @param number the number of its problem
    /// @param problem the problem in one line
    /// @param mark as it is kept, such as `wrong-form`
    /// @param time how long it took, in words; blank where it is not known
    public record Answer(String number, String problem, String written, String mark, String time) {}

    /// The last `most` of each.
    static WorkPart of(PupilExport known, Telling telling, int most) {
        return new WorkPart(
                known.handouts().reversed().stream()
                        .limit(most)
                        .map(handout -> handed(known, handout, telling))
                        .toList(),
                known.work().reversed().stream()
                        .limit(most)
                        .map(work -> piece(known, work, telling))
                        .toList(),
                Math.max(0, known.work().size() - most));
    }

    private static Handed handed(PupilExport known, Handout handout, Telling telling) {
        String sheet = handout.sheetId();
        return new Handed(
                sheet,
                known.sheet(sheet).map(Sheet::title).orElse(sheet),
                telling.day(handout.at()),
                known.work().stream().anyMatch(work -> work.sheetId().equals(sheet)));
    }

    private static Piece piece(PupilExport known, Work work, Telling telling) {
        List<Problem> problems = known.sheet(work.sheetId()).map(Sheet::problems).orElse(List.of());
        List<Answer> answers =
                IntStream.range(0, Math.min(problems.size(), work.answers().size()))
                        .mapToObj(i -> answer(problems.get(i), work.answers().get(i), telling))
                        .toList();
        return new Piece(
                work.id(),
                work.sheetId(),
                known.sheet(work.sheetId()).map(Sheet::title).orElse(work.sheetId()),
                telling.day(work.handedAt()),
                work.right(),
                work.took().map(telling::time).orElse(""),
                answers);
    }

    private static Answer answer(Problem problem, Work.MarkedAnswer answer, Telling telling) {
        return new Answer(
                problem.id(),
                Shown.line(problem),
                answer.written(),
                answer.mark(),
                answer.took().map(telling::tenths).orElse(""));
    }
}
