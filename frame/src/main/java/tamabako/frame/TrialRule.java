package tamabako.frame;

/// How the trial digit of a quotient is guessed.
public enum TrialRule {
    /// Leading digits by the divisor's first digit, at most 9: never too small, so only revised
    /// down.
    ///
    /// Source: modern division (shōjohō) in Using an Abacus, Wikibooks.
    FIRST_DIGIT,
    /// Leading digits by the divisor's first digit rounded by its second: sometimes too small, then
    /// revised up.
    ///
    /// Common practice, no published source.
    ROUNDED_FIRST_DIGIT
}
