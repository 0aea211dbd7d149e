package tamabako.paper.layout;

/// The weight of the letters.
public enum Face {
    REGULAR,
    BOLD
}
