package tamabako.paper.wish;

import java.util.Locale;

/// The paper that is printed on. Lengths are millimetres.
public enum PageSize {
    /// ISO 216.
    A4(210, 297),
    /// JIS P 0138, the paper of the JCCI proficiency test (shuzan.jp/kentei/shuzan); not the B4 of
    /// ISO 216, which is a little smaller.
    B4(257, 364),
    /// US Letter.
    LETTER(215.9, 279.4);

    private final double width;
    private final double height;

    PageSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /// The short side.
    public double width() {
        return width;
    }

    /// The long side.
    public double height() {
        return height;
    }

    /// The word used in files and commands: `a4`, `b4`, `letter`.
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
