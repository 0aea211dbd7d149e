package tamabako.problems.making.column;

import java.math.BigDecimal;
import java.util.Optional;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.problems.making.draw.Powers;

/// Tells what of a column does not meet a condition.
final class Judge {

    private Judge() {}

    static Optional<Missed> missed(Condition condition, Facts facts) {
        return switch (condition) {
            case HandCondition hand -> HandJudge.missed(hand, facts);
            case DigitCondition digits -> DigitJudge.missed(digits, facts);
            case TotalCondition totals -> missed(totals, facts);
        };
    }

    private static Optional<Missed> missed(TotalCondition condition, Facts facts) {
        BigDecimal answer = BigDecimal.valueOf(facts.totals().last(), facts.places());
        return switch (condition) {
            case TotalCondition.BelowZero(Dips dips) -> missed(dips, facts, answer);
            case TotalCondition.AnswerLength(int least, int most) -> {
                int length = Powers.digits(Math.abs(facts.totals().last()));
                yield length >= least && length <= most
                        ? Optional.empty()
                        : Optional.of(new Missed.OtherLength(answer, least, most));
            }
            case TotalCondition.NotRound() ->
                    facts.totals().last() % 10 == 0
                            ? Optional.of(new Missed.RoundAnswer(answer))
                            : Optional.empty();
        };
    }

    private static Optional<Missed> missed(Dips dips, Facts facts, BigDecimal answer) {
        boolean dipped =
                switch (dips) {
                    case NEVER -> facts.totals().dips() == 0;
                    case ONCE_AND_BACK -> facts.totals().dips() == 1;
                    case TO_THE_END -> facts.totals().dips() == 1 || facts.totals().dips() == 2;
                };
        if (!dipped) {
            return Optional.of(
                    dips == Dips.NEVER
                            ? new Missed.FellBelowZero(facts.totals().firstBelow())
                            : new Missed.OtherDips(facts.totals().dips()));
        }
        boolean endsBelow = answer.signum() < 0;
        return endsBelow == (dips == Dips.TO_THE_END)
                ? Optional.empty()
                : Optional.of(new Missed.OtherSide(answer));
    }
}
