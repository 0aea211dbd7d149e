package tamabako.voice.number;

import java.util.Locale;

/// In what way a number is said.
public enum Wording {
    /// As it is read: "twelve thousand three hundred forty-five".
    FULL,
    /// Groups of three without the names of the powers: "twelve, three forty-five". Half as long
    /// for a number of many digits.
    GROUPS,
    /// Figure by figure: "one two three four five".
    FIGURES;

    /// The word used in files and commands.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
