package tamabako.paper.figures;

/// The cells in which figures stand. Widths are parts of the size of the figures (ems).
///
/// The digits of a proportional font have different widths (here the 1 is narrower), so each stands
/// in the middle of a cell of its own; that makes the figures tabular.
public final class Cells {

    /// How much the figures are narrowed, so that ten-digit numbers go five across.
    public static final double NARROWED = 0.86;

    /// The cell of a digit.
    public static final double DIGIT = 0.58;

    /// The cell of a comma or point.
    public static final double MARK = 0.25;

    /// The cell of a minus sign, with clear room after it.
    public static final double MINUS = 1.0;

    /// The cell of the blank between a currency code and its amount.
    public static final double BLANK = 0.3;

    /// The cell of a currency sign or of a letter of a currency code.
    public static final double LETTER = 0.66;

    private Cells() {}

    /// The width of the cell of `character`.
    public static double width(char character) {
        return switch (character) {
            case '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> DIGIT;
            case PrintedNumber.COMMA, PrintedNumber.POINT -> MARK;
            case PrintedNumber.MINUS -> MINUS;
            case ' ' -> BLANK;
            default -> LETTER;
        };
    }

    /// The width of all cells of `figures`.
    public static double width(String figures) {
        double sum = 0;
        for (int i = 0; i < figures.length(); i++) {
            sum += width(figures.charAt(i));
        }
        return sum;
    }

    /// Where a character of the width `advance` starts in its cell: in the middle, but a minus at
    /// the left, clear of the digits.
    public static double inset(char character, double advance) {
        return character == PrintedNumber.MINUS ? 0 : (width(character) - advance) / 2;
    }
}
