package tamabako.paper.layout;

import tamabako.paper.layout.Mark.Words;
import tamabako.paper.wish.Size;
import tamabako.paper.words.PrintWords;

/// What every piece of a layout needs to know: the words of print, how large they are, the page,
/// and the measure of the font.
record Setting(PrintWords words, Size size, Page page, Measure measure) {

    /// The same on a page that lies on its long side.
    Setting lying() {
        return new Setting(words, size, page.lying(), measure);
    }

    boolean large() {
        return size == Size.LARGE;
    }

    /// `normal` at normal size, `large` at large size.
    double pick(double normal, double large) {
        return large() ? large : normal;
    }

    /// Where print begins from the left.
    double left() {
        return page.left();
    }

    /// Where print ends at the right.
    double right() {
        return page.right();
    }

    /// The width of all that is printed.
    double across() {
        return page.across();
    }

    /// The width of words in points.
    double width(Face face, double size, String text) {
        return size * measure.width(face, text);
    }

    /// Words that end at `right`.
    Words endingAt(double right, double baseline, Face face, double size, Ink ink, String text) {
        return new Words(right - width(face, size, text), baseline, face, size, ink, text);
    }

    /// Words whose middle is at `middle`.
    Words centred(double middle, double baseline, Face face, double size, String text) {
        double left = middle - width(face, size, text) / 2;
        return new Words(left, baseline, face, size, Ink.BLACK, text);
    }
}
