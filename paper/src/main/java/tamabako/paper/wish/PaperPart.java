package tamabako.paper.wish;

import java.util.Locale;

/// What is printed of a paper.
public enum PaperPart {
    /// The problems, for the pupil.
    PAPER,
    /// The leaves of its slip pads, to be cut and bound.
    PADS,
    /// What the caller reads aloud, where problems are called.
    SCRIPT,
    /// The answers under the same numbers.
    KEY,
    /// The answers with a box to tick for each, the points, and what has to be reached.
    MARKING;

    /// The word used in files and commands: `paper`, `pads`, `script`, `key`, `marking`.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
