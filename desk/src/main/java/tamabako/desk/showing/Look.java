package tamabako.desk.showing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/// As what a number is shown.
public enum Look {
    FIGURES,
    FRAME;

    /// As it stands in forms and addresses.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Look::word).toList();
    }

    static Look of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
