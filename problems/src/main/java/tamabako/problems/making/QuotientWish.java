package tamabako.problems.making;

/// Exact quotients (warizan) of whole numbers. No divisor is 1 or ends in 0; common practice, no
/// published source.
///
/// @param divisorDigits digits of the divisor (hō), 1 to 15
/// @param quotientDigits digits of the quotient (shō), 1 to 15
public record QuotientWish(int divisorDigits, int quotientDigits) implements Wish {}
