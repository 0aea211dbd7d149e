package tamabako.desk.book;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tamabako.records.Attended;

/// The words for how a pupil attended, as forms and texts have them.
final class Hows {

    /// All of them.
    static final List<String> WORDS = Stream.of(Attended.How.values()).map(Hows::word).toList();

    private Hows() {}

    static String word(Attended.How how) {
        return how.name().toLowerCase(Locale.ROOT);
    }

    static Optional<Attended.How> find(String word) {
        return Stream.of(Attended.How.values()).filter(how -> word(how).equals(word)).findFirst();
    }
}
