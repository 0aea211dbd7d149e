package tamabako.problems.making.column;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/// Tells what digits stand otherwise than a condition asks.
final class DigitJudge {

    private DigitJudge() {}

    static Optional<Missed> missed(DigitCondition condition, Facts facts) {
        return switch (condition) {
            case DigitCondition.DigitsEach(int least, int most) -> digitsEach(facts, least, most);
            case DigitCondition.LeadsDiffer() -> leads(facts);
            case DigitCondition.RowsDiffer(int alike) -> rows(facts, alike);
            case DigitCondition.NoRepeatedDigit() -> oneDigit(facts);
            case DigitCondition.NoCounting() -> counting(facts);
            case DigitCondition.PlacesDiffer() -> places(facts);
            case DigitCondition.LastDigits(int most) -> endings(facts, most);
        };
    }

    private static Optional<Missed> digitsEach(Facts facts, int least, int most) {
        for (int digit = 0; digit <= 9; digit++) {
            if (facts.digits(digit) < least || facts.digits(digit) > most) {
                return Optional.of(new Missed.DigitCount(digit, facts.digits(digit), least, most));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> leads(Facts facts) {
        for (int row = 1; row < facts.rows(); row++) {
            int lead = Digits.lead(facts.size(row));
            if (lead == Digits.lead(facts.size(row - 1))) {
                return Optional.of(new Missed.SameLead(row + 1, lead));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> rows(Facts facts, int alike) {
        Map<Long, Integer> first = new HashMap<>();
        int left = alike;
        for (int row = 0; row < facts.rows(); row++) {
            Integer earlier = first.putIfAbsent(facts.size(row), row);
            if (earlier != null && left-- == 0) {
                return Optional.of(new Missed.SameRow(row + 1, earlier + 1));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> oneDigit(Facts facts) {
        for (int row = 0; row < facts.rows(); row++) {
            if (Digits.isOneDigit(facts.size(row))) {
                return Optional.of(new Missed.OneDigit(row + 1, facts.written(row)));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> counting(Facts facts) {
        for (int row = 0; row < facts.rows(); row++) {
            if (Digits.counts(facts.size(row))) {
                return Optional.of(new Missed.CountingRow(row + 1, facts.written(row)));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> places(Facts facts) {
        for (int row = 1; row < facts.rows(); row++) {
            long same = Digits.sames(facts.size(row - 1), facts.size(row));
            if (same != 0) {
                int place = Long.numberOfTrailingZeros(same) / 4;
                int digit = Digits.digit(facts.size(row), place);
                return Optional.of(new Missed.SamePlace(row + 1, digit));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> endings(Facts facts, int most) {
        int fives = 0;
        boolean odd = false;
        for (int row = 0; row < facts.rows(); row++) {
            int digit = Digits.digit(facts.size(row), 0);
            fives += digit % 5 == 0 ? 1 : 0;
            odd |= digit % 2 == 1;
        }
        if (!odd) {
            return Optional.of(new Missed.EvenEndings());
        }
        return fives > most
                ? Optional.of(new Missed.EndingsZeroOrFive(fives, most))
                : Optional.empty();
    }
}
