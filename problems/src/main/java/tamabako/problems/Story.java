package tamabako.problems;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/// A word problem (ōyō keisan): the story that asks for the problem. Where it takes more than one
/// sum, the problem is the last of them and `earlier` are those before it, in their order.
///
/// @param texts the story by language tag, `en` at least
/// @param earlier the sums whose answers the last sum needs
public record Story(Map<String, String> texts, List<Problem> earlier) implements Told {

    public Story {
        texts = Map.copyOf(new TreeMap<>(texts));
        earlier = List.copyOf(earlier);
        if (!texts.containsKey("en")) {
            throw new IllegalArgumentException("A story is told in English at least.");
        }
    }

    /// The story in a language, in English where it is not told in that one.
    public String in(Locale language) {
        String english = Objects.requireNonNull(texts.get("en"));
        return texts.getOrDefault(language.getLanguage(), english);
    }
}
