package tamabako.paper.layout;

/// What the layout must know of the print font.
public interface Measure {

    /// The width of `text`, in parts of its size.
    double width(Face face, String text);

    /// Whether the font has a sign for the character.
    boolean prints(int codePoint);
}
