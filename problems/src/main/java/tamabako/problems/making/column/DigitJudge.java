package tamabako.problems.making.column;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import tamabako.frame.walk.PackedNumber;

/// Tells what digits stand otherwise than a condition asks.
final class DigitJudge {

    private DigitJudge() {}

    static Optional<Missed> missed(DigitCondition condition, Facts facts) {
        return switch (condition) {
            case DigitCondition.DigitsEach(int least, int most) ->
                    digitsEach(facts.digits(), least, most);
            case DigitCondition.LeadsDiffer() -> leads(facts);
            case DigitCondition.RowsDiffer() -> rows(facts);
            case DigitCondition.NoRepeatedDigit() -> oneDigit(facts);
            case DigitCondition.NoCounting() -> counting(facts);
            case DigitCondition.PlacesDiffer() -> places(facts);
            case DigitCondition.LastDigits(int most) -> endings(facts, most);
        };
    }

    private static Optional<Missed> digitsEach(int[] counts, int least, int most) {
        for (int digit = 0; digit <= 9; digit++) {
            if (counts[digit] < least || counts[digit] > most) {
                return Optional.of(new Missed.DigitCount(digit, counts[digit], least, most));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> leads(Facts facts) {
        for (int row = 1; row < facts.rows.length; row++) {
            int lead = Digits.lead(facts.rows[row]);
            if (lead == Digits.lead(facts.rows[row - 1])) {
                return Optional.of(new Missed.SameLead(row + 1, lead));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> rows(Facts facts) {
        Map<Long, Integer> first = new HashMap<>();
        for (int row = 0; row < facts.rows.length; row++) {
            Integer earlier = first.putIfAbsent(Digits.size(facts.rows[row]), row);
            if (earlier != null) {
                return Optional.of(new Missed.SameRow(row + 1, earlier + 1));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> oneDigit(Facts facts) {
        for (int row = 0; row < facts.rows.length; row++) {
            if (Digits.isOneDigit(facts.rows[row])) {
                return Optional.of(new Missed.OneDigit(row + 1, facts.number(row).abs()));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> counting(Facts facts) {
        for (int row = 0; row < facts.rows.length; row++) {
            if (Digits.counts(facts.rows[row])) {
                return Optional.of(new Missed.CountingRow(row + 1, facts.number(row).abs()));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> places(Facts facts) {
        for (int row = 1; row < facts.rows.length; row++) {
            int place = Digits.samePlace(facts.rows[row - 1], facts.rows[row]);
            if (place >= 0) {
                int digit = PackedNumber.digit(facts.rows[row], place);
                return Optional.of(new Missed.SamePlace(row + 1, digit));
            }
        }
        return Optional.empty();
    }

    private static Optional<Missed> endings(Facts facts, int most) {
        int fives = 0;
        boolean odd = false;
        for (long row : facts.rows) {
            int digit = PackedNumber.digit(row, 0);
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
