package tamabako.problems.grade.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tamabako.problems.grade.Cite;
import tamabako.problems.grade.Figure;
import tamabako.problems.grade.Label;

/// The sources that a file lists, by the names that it calls them by.
final class Sources {

    private static final int MOST = 50;
    private static final Map<String, Figure> FIGURES = Words.of(Figure.values(), Figure::word);

    private final Map<String, Source> named = new LinkedHashMap<>();

    private record Source(Label name, boolean confirmed) {}

    static Sources read(Fields ladder) {
        Sources sources = new Sources();
        ladder.there("sources")
                .map(node -> Fields.of("sources", node, ladder.mistakes()))
                .ifPresent(sources::readAll);
        return sources;
    }

    private void readAll(Fields all) {
        if (all.listKeys().size() > MOST) {
            all.fault(new Fault.NotSoMany("sources", all.listKeys().size(), MOST));
            return;
        }
        for (String word : all.listKeys()) {
            Fields one =
                    Fields.of("sources", all.needed(word).orElseThrow(), all.mistakes())
                            .knowing(List.of("name", "confirmed"));
            boolean confirmed = one.value("confirmed").map(Value::yes).orElse(false);
            named.put(all.key(word).name(), new Source(Labels.read(one, "name"), confirmed));
        }
    }

    /// Where the figures of a grade or a section come from.
    List<Cite> cites(Fields place) {
        List<Cite> cites = new ArrayList<>();
        place.there("from")
                .map(node -> Fields.of("from", node, place.mistakes()))
                .ifPresent(from -> from.listKeys().forEach(word -> cite(from, word, cites)));
        return cites;
    }

    private void cite(Fields from, String word, List<Cite> cites) {
        Set<Figure> figures = EnumSet.noneOf(Figure.class);
        for (Value figure : from.words(word, FIGURES.size())) {
            figures.add(figure.word(FIGURES, Figure.COUNT));
        }
        Source source = named.get(word);
        if (source == null) {
            Fault unknown = new Fault.NothingOfThatName("from", word, List.copyOf(named.keySet()));
            from.key(word).fault(unknown);
        } else {
            cites.add(new Cite(figures, source.name(), source.confirmed()));
        }
    }
}
