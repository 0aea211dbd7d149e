package tamabako.problems.grade.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/// The words that a file has for the constants of an enum.
final class Words {

    private Words() {}

    /// The constants by their words, in their order.
    static <E extends Enum<E>> Map<String, E> of(E[] constants, Function<E, String> word) {
        Map<String, E> words = new LinkedHashMap<>();
        for (E constant : constants) {
            words.put(word.apply(constant), constant);
        }
        return Collections.unmodifiableMap(words);
    }

    /// The constants by their names in small letters, with spaces.
    static <E extends Enum<E>> Map<String, E> of(E[] constants) {
        return of(constants, constant -> spaced(constant.name()));
    }

    private static String spaced(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
