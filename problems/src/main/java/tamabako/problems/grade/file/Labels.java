package tamabako.problems.grade.file;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.grade.Label;

/// Reads names and short texts: one text for all languages, or one for each.
final class Labels {

    private static final int LONGEST = 500;
    private static final Set<String> LANGUAGES = Set.of(Locale.getISOLanguages());

    private Labels() {}

    static Label read(Fields place, String key) {
        Optional<Node> found = place.needed(key);
        if (found.isEmpty()) {
            return Label.of("");
        }
        if (!(found.get() instanceof MappingNode)) {
            return Label.of(place.value(key).map(value -> value.text(LONGEST)).orElse(""));
        }
        Fields texts = Fields.of(key, found.get(), place.mistakes());
        return byLanguage(texts, key);
    }

    private static Label byLanguage(Fields texts, String key) {
        Map<String, String> read = new TreeMap<>();
        for (String language : texts.listKeys()) {
            if (!LANGUAGES.contains(language)) {
                Value word = texts.key(language);
                word.fault(new Fault.NotALanguage(word.shown()));
            }
            texts.value(language).ifPresent(text -> read.put(language, text.text(LONGEST)));
        }
        if (!texts.has("en")) {
            texts.fault(new Fault.EnglishMissing(key));
            read.put("en", "");
        }
        return new Label(read);
    }
}
