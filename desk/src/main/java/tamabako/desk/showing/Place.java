package tamabako.desk.showing;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/// Where a showing is looked at.
public enum Place {
    /// On the computer or tablet in front of one person.
    HERE,
    /// On a large screen in front of a class, whose width and nearest seat are known.
    CLASSROOM;

    /// As it stands in forms and addresses.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> words() {
        return Arrays.stream(values()).map(Place::word).toList();
    }

    static Place of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
