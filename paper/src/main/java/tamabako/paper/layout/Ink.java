package tamabako.paper.layout;

/// How dark something is printed. Only black ink is used, and never on an area.
public enum Ink {
    /// What is read.
    BLACK(0),
    /// What is read beside it: row numbers, the foot. Contrast 9 to 1 on white.
    SOFT(0.3f),
    /// Boxes and lines to write on.
    LINE(0.4f),
    /// Fine rules that lead the eye.
    HAIR(0.66f);

    private final float gray;

    Ink(float gray) {
        this.gray = gray;
    }

    /// 0 is black, 1 is white.
    public float gray() {
        return gray;
    }
}
