package tamabako.problems.making;

/// Products (kakezan) of whole numbers. No factor is 1 or ends in 0; common practice, no published
/// source.
///
/// @param multiplicandDigits digits of the multiplicand (jitsu), 1 to 15
/// @param multiplierDigits digits of the multiplier (hō), 1 to 15
public record ProductWish(int multiplicandDigits, int multiplierDigits) implements Wish {}
