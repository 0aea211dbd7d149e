package tamabako.desk.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.desk.entry.GridPage.Refused;
import tamabako.desk.entry.GridView.Cell;
import tamabako.desk.entry.GridView.Kept;
import tamabako.desk.entry.GridView.Line;
import tamabako.desk.web.Days;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Words;
import tamabako.problems.Problem;
import tamabako.records.Draft;
import tamabako.records.Identity;
import tamabako.records.Pupil;
import tamabako.records.Work;
import tamabako.records.Work.MarkedAnswer;

/// Makes the line of each pupil: what was refused stands as it was typed, else a draft, else the
/// work that is corrected, else nothing.
///
/// @param asked the fields that say which lines are open although their work is kept: `correct`
///   names work, `again` a pupil
record Lines(List<Problem> problems, Fields asked, Words words, Days days) {

    Line line(
            Pupil pupil, Optional<Work> last, Optional<Draft> draft, Optional<Refused> refused) {
        boolean isAgain = asked.text("again").equals(pupil.id());
        Optional<Work> corrected =
                last.filter(work ->
                        asked.text("correct").equals(work.id())
                                || (refused.isPresent()
                                        && asked.text("work").equals(work.id())));
        boolean isOpen =
                last.isEmpty() || corrected.isPresent() || isAgain || refused.isPresent();
        Typed typed =
                refused.map(Refused::typed)
                        .or(() -> draft.filter(_ -> isOpen).map(this::typed))
                        .or(() -> corrected.map(this::typed))
                        .orElseGet(() -> Typed.read(Fields.NONE, problems.size()));
        return new Line(
                pupil,
                corrected.map(Work::id).orElseGet(Identity::fresh),
                isOpen,
                draft.isPresent(),
                isOpen ? cells(typed) : last.map(Lines::keptCells).orElse(List.of()),
                typed.took(),
                last.map(this::kept),
                refused.map(Refused::fault));
    }

    private Typed typed(Draft draft) {
        List<String> written = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            written.add(i < draft.written().size() ? draft.written().get(i) : "");
        }
        return new Typed(written, draft.took(), Typed.rules(asked));
    }

    private Typed typed(Work work) {
        return new Typed(
                work.answers().stream().map(MarkedAnswer::written).toList(),
                work.took().map(Clocked::write).orElse(""),
                Typed.rules(asked));
    }

    private List<Cell> cells(Typed typed) {
        List<String> marks = typed.marks(problems);
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < problems.size(); i++) {
            String written = i < typed.written().size() ? typed.written().get(i) : "";
            cells.add(new Cell(written, written.isBlank() ? "" : marks.get(i)));
        }
        return cells;
    }

    private static List<Cell> keptCells(Work work) {
        return work.answers().stream().map(one -> new Cell(one.written(), one.mark())).toList();
    }

    private Kept kept(Work work) {
        return new Kept(
                work.id(),
                work.right(),
                problems.size(),
                days.say(work.handedAt(), words.language()),
                work.took().map(Clocked::write).orElse(""));
    }
}
