package tamabako.records;

import java.util.Locale;

/// Constants as the tables have them: one small word.
final class Words {

    private Words() {}

    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    static <E extends Enum<E>> E constant(Class<E> type, String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
    }
}
