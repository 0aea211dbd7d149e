package tamabako.desk.showing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.desk.web.Fields;
import tamabako.desk.web.Request;
import tamabako.desk.web.Verb;
import tamabako.desk.web.Words;
import tamabako.problems.Column;
import tamabako.records.ClassBook;

/// A plan of showings as a whole, for whoever takes it over, such as a room.
///
/// @param columns what is shown, in its order
/// @param pace how fast the numbers come
/// @param look as what they are shown
/// @param anySize as large as the screen allows, which only a slow pace may be
public record ShowingPlan(List<Column> columns, Pace pace, Look look, boolean anySize) {

    public ShowingPlan {
        columns = List.copyOf(columns);
    }

    /// Reads the address of a stage; empty where there is nothing that can be shown.
    ///
    /// @param plan the fields of the address
    /// @param count how many sums are made, where they do not come from a sheet
    public static Optional<ShowingPlan> read(ClassBook book, Fields plan, int count, Words words) {
        Request request =
                new Request(Verb.GET, "/showing/stage", Map.of(), plan, Fields.NONE, words, "");
        return new ShowingForm(request)
                .read()
                .flatMap(showing ->
                        ShownProblem.all(book, showing, plan, count)
                                .map(columns ->
                                        new ShowingPlan(
                                                columns,
                                                showing.pace(),
                                                showing.look(),
                                                showing.anySize())));
    }

    /// Whether somebody has read the caution, without which nothing is shown.
    public static boolean isCautionRead(ClassBook book) {
        return book.settings().find(ShowingPages.CAUTION).isPresent();
    }
}
