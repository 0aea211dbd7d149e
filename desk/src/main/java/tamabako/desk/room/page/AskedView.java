package tamabako.desk.room.page;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import tamabako.desk.room.RoomState;
import tamabako.desk.sheet.Shown;
import tamabako.problems.Problem;

/// The problems of a round as pupils see them: what is asked, and nothing of the answers.
///
/// @param run which run of a round it is
/// @param problems in their order
/// @param minus whether a minus sign may be needed
/// @param remainder whether a remainder may be needed
public record AskedView(int run, List<Asked> problems, boolean minus, boolean remainder) {

    public AskedView {
        problems = List.copyOf(problems);
    }

    /// One problem: its number, and its rows or its one line; nothing to be seen where it is heard
    /// or shown.
    public record Asked(String id, boolean isColumn, List<String> rows) {
        public Asked {
            rows = List.copyOf(rows);
        }
    }

    static AskedView of(RoomState room, Locale language) {
        List<Problem> problems = room.current().problems();
        return new AskedView(
                room.run(),
                room.current().activity().inTurn()
                        ? problems.stream().map(AskedView::heard).toList()
                        : problems.stream().map(problem -> asked(problem, language)).toList(),
                problems.stream().anyMatch(problem -> problem.answer().value().signum() < 0),
                problems.stream()
                        .flatMap(problem -> problem.answer().remainder().stream())
                        .anyMatch(remainder -> remainder.compareTo(BigDecimal.ZERO) != 0));
    }

    private static Asked heard(Problem problem) {
        return new Asked(problem.id(), false, List.of());
    }

    private static Asked asked(Problem problem, Locale language) {
        Shown shown = Shown.of(problem, language);
        return new Asked(shown.id(), shown.isColumn(), shown.rows());
    }
}
