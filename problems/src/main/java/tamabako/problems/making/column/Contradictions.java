package tamabako.problems.making.column;

import tamabako.frame.Technique;
import tamabako.problems.making.column.TotalCondition.Dips;
import tamabako.problems.making.draw.Powers;

/// What can be seen not to go together without looking at any column.
final class Contradictions {

    private final Asked asked;
    private final int rows;
    private final Lengths lengths;

    private Contradictions(Asked asked) {
        this.asked = asked;
        this.rows = asked.shape().rows();
        this.lengths = asked.shape().lengths();
    }

    /// Whether there is any. If not, there may be no column all the same.
    static boolean areIn(Asked asked) {
        return new Contradictions(asked).any();
    }

    private boolean any() {
        return asked.patterns().count().signum() == 0
                || tooManySteps()
                || asked.conditions().stream().anyMatch(this::isImpossible);
    }

    private boolean isImpossible(Condition condition) {
        return switch (condition) {
            case HandCondition hand -> isImpossible(hand);
            case DigitCondition.DigitsEach each -> !new Bags(asked, each).any();
            case DigitCondition.RowsDiffer(int alike) -> alike < asked.shape().mustBeAlike();
            case TotalCondition.BelowZero(Dips dips) -> dips != Dips.NEVER && asked.neverBelow();
            case TotalCondition.AnswerLength(int least, int most) ->
                    least > most || least > mostAnswerDigits() || most < leastAnswerDigits();
            default -> false;
        };
    }

    private boolean isImpossible(HandCondition condition) {
        return switch (condition) {
            case HandCondition.OnlyTechniques(var techniques) -> techniques.isEmpty();
            case HandCondition.TechniqueCount(Technique technique, int least, int most) ->
                    least > most || (least > 0 && !asked.allowed().contains(technique));
            case HandCondition.CarryRun(int least, int most) ->
                    least > most
                            || (least > 0 && (!asked.passesTen() || least > mostAnswerDigits()));
            case HandCondition.Strokes(int least, int most) ->
                    least > most || most < rows || least > 2L * mostSteps();
        };
    }

    /// Whether more steps are asked for by technique than there can be.
    private boolean tooManySteps() {
        long sum = 0;
        for (Condition condition : asked.conditions()) {
            if (condition instanceof HandCondition.TechniqueCount(_, int least, _)) {
                sum += Math.max(0, least);
            }
        }
        return sum > mostSteps() - lengths.least();
    }

    /// At most one step for each digit, and in each row but the first one carry for each rod.
    private long mostSteps() {
        long carries = asked.passesTen() ? (long) (rows - 1) * mostAnswerDigits() : 0;
        return lengths.mostInAll(rows) + carries;
    }

    private int mostAnswerDigits() {
        long plus = (long) rows - asked.signs().leastMinus();
        long minus = asked.neverBelow() ? 0 : Math.min(rows - 1L, asked.signs().mostMinus());
        return Powers.digits(Math.max(plus, minus) * (Powers.of(lengths.most()) - 1));
    }

    private int leastAnswerDigits() {
        return asked.signs().mostMinus() == 0
                ? Powers.digits(rows * Powers.of(lengths.least() - 1))
                : 1;
    }
}
