package tamabako.problems.grade.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.problems.Mode;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Label;
import tamabako.problems.grade.Section;
import tamabako.problems.grade.Section.Order;

/// Reads the sections of a grade.
final class SectionReader {

    private static final int MOST_BATCHES = 100;
    private static final int MOST_POINTS = 1000;
    private static final Map<String, Mode> MODES = Words.of(Mode.values(), Mode::word);
    private static final Map<String, Order> ORDERS = Words.of(Order.values());
    private static final List<String> KNOWN =
            List.of("section", "name", "points", "time", "mode", "order", "problems", "from");

    private final Sources sources;
    private final Names names = new Names("section");

    SectionReader(Sources sources) {
        this.sources = sources;
    }

    /// The section at `place`, without the problems that there is a mistake in.
    Section read(Fields place) {
        place.knowing(KNOWN);
        String id = names.read(place);
        Label name = Labels.read(place, "name");
        List<Batch> batches =
                place.items("problems", MOST_BATCHES).stream()
                        .map(node -> Fields.of("problems", node, place.mistakes()))
                        .map(FormatReader::batch)
                        .flatMap(Optional::stream)
                        .toList();
        return new Section(
                id,
                name,
                batches,
                place.whole("points", 1, MOST_POINTS),
                place.maybe("time").map(Value::time),
                place.word("mode", MODES, Mode.FRAME),
                place.word("order", ORDERS, Order.AS_LISTED),
                sources.cites(place));
    }
}
