package tamabako.frame;

/// How a square root is worked.
public enum SquareRootWay {
    /// Halve the remainder once, then divide by the root and take off half squares (han-kuku).
    HALF_NINE_NINE,
    /// Divide by twice the root and take off squares (Kojima 1963, chapter VII).
    DOUBLE_ROOT
}
