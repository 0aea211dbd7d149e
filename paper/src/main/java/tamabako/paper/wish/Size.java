package tamabako.paper.wish;

import java.util.Locale;

/// How large the print is. All lengths are points (1/72 inch).
///
/// The digits of the print font are 0.81 of its size high: 3.2 to 4.3 mm at normal, 5.2 to 5.7 mm
/// at large size. Large print is 18 points and more, which is also what WCAG 2.2 calls large text.
public enum Size {
    NORMAL(11, 15, 10, 26),
    LARGE(18, 20, 18, 36);

    private final double leastFigures;
    private final double mostFigures;
    private final double words;
    private final double box;

    Size(double leastFigures, double mostFigures, double words, double box) {
        this.leastFigures = leastFigures;
        this.mostFigures = mostFigures;
        this.words = words;
        this.box = box;
    }

    /// The smallest size of figures; longer numbers get fewer problems across instead.
    public double leastFigures() {
        return leastFigures;
    }

    /// The size of figures where there is room.
    public double mostFigures() {
        return mostFigures;
    }

    /// The size of words.
    public double words() {
        return words;
    }

    /// The height of an answer box, for writing by hand.
    public double box() {
        return box;
    }

    /// The word used in files and commands: `normal`, `large`.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
