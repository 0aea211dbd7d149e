package tamabako.problems.making.column;

/// How far the digits of a column are from a condition.
final class DigitMeasure {

    private DigitMeasure() {}

    static Measure of(DigitCondition condition) {
        return switch (condition) {
            case DigitCondition.DigitsEach(int least, int most) ->
                    facts -> digitsEach(facts, least, most);
            case DigitCondition.LeadsDiffer() -> DigitMeasure::leads;
            case DigitCondition.RowsDiffer(int alike) ->
                    facts -> Math.max(0, rowsAlike(facts) - alike);
            case DigitCondition.NoRepeatedDigit() -> DigitMeasure::oneDigit;
            case DigitCondition.NoCounting() -> DigitMeasure::counting;
            case DigitCondition.PlacesDiffer() -> DigitMeasure::places;
            case DigitCondition.LastDigits(int most) -> facts -> endings(facts, most);
        };
    }

    private static int digitsEach(Facts facts, int least, int most) {
        int sum = 0;
        for (int digit = 0; digit <= 9; digit++) {
            sum += Measure.beyond(facts.digits(digit), least, most);
        }
        return sum;
    }

    private static int leads(Facts facts) {
        int sum = 0;
        long before = lead(facts.size(0));
        for (int row = 1; row < facts.rows(); row++) {
            long lead = lead(facts.size(row));
            sum += lead == before ? 1 : 0;
            before = lead;
        }
        return sum;
    }

    /// The four bits of the first digit.
    private static long lead(long size) {
        return size >>> ((63 - Long.numberOfLeadingZeros(size)) & ~3);
    }

    private static int rowsAlike(Facts facts) {
        int sum = 0;
        for (int row = 1; row < facts.rows(); row++) {
            sum += facts.isLikeEarlier(row) ? 1 : 0;
        }
        return sum;
    }

    private static int oneDigit(Facts facts) {
        int sum = 0;
        for (int row = 0; row < facts.rows(); row++) {
            sum += Digits.isOneDigit(facts.size(row)) ? 1 : 0;
        }
        return sum;
    }

    private static int counting(Facts facts) {
        int sum = 0;
        for (int row = 0; row < facts.rows(); row++) {
            sum += Digits.counts(facts.size(row)) ? 1 : 0;
        }
        return sum;
    }

    private static int places(Facts facts) {
        int sum = 0;
        for (int row = 1; row < facts.rows(); row++) {
            sum += Long.bitCount(Digits.sames(facts.size(row - 1), facts.size(row)));
        }
        return sum;
    }

    private static int endings(Facts facts, int most) {
        int fives = 0;
        int odd = 0;
        for (int row = 0; row < facts.rows(); row++) {
            int digit = Digits.digit(facts.size(row), 0);
            fives += digit % 5 == 0 ? 1 : 0;
            odd |= digit & 1;
        }
        return Math.max(0, fives - most) + (odd == 0 ? 1 : 0);
    }
}
