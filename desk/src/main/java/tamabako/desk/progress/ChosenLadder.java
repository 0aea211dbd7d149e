package tamabako.desk.progress;

import java.util.List;
import java.util.Locale;
import tamabako.desk.ladder.KnownLadders;
import tamabako.problems.grade.Ladder;
import tamabako.records.ClassBook;

/// The ladder whose grades the desk prepares its pupils for. The teacher chooses it once; until
/// then it is [#FIRST].
final class ChosenLadder {

    /// The ladder that begins with the easiest grades.
    private static final String FIRST = "abacus-by-sections";

    private static final String SETTING = "progress.ladder";

    private final ClassBook book;
    private final KnownLadders ladders;

    ChosenLadder(ClassBook book) {
        this.book = book;
        this.ladders = new KnownLadders(book.ladders());
    }

    /// The ladder that was chosen; one that is gone is no choice.
    Ladder ladder() {
        return book.settings()
                .find(SETTING)
                .flatMap(ladders::find)
                .or(() -> ladders.find(FIRST))
                .map(KnownLadders.Known::ladder)
                .orElseThrow(() -> new IllegalStateException(FIRST + " is shipped."));
    }

    /// Chooses the ladder that goes by `id`, if there is one.
    void choose(String id) {
        ladders.find(id).ifPresent(known -> book.settings().keep(SETTING, known.ladder().id()));
    }

    /// All ladders to choose from.
    List<ReadinessPart.Choice> choices(Locale language) {
        String chosen = ladder().id();
        return ladders.all().stream()
                .map(KnownLadders.Known::ladder)
                .map(one ->
                        new ReadinessPart.Choice(
                                one.id(), one.name().in(language), one.id().equals(chosen)))
                .toList();
    }
}
