package tamabako.frame.words;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tamabako.frame.Cause;
import tamabako.frame.Step;

/// What a cause is spoken of as: the phrase that leads into its steps, the phrase that such a step
/// has in place of adding or taking, and the values for both.
record Topic(Optional<String> lead, Optional<String> verb, Map<String, ?> values) {

    /// The topic of the cause of `step`.
    static Topic of(Step step) {
        return of(step.cause(), step.before().value(), step.digit(), step.rod());
    }

    /// The topic of `cause` for a step of `digit` on `rod`, which holds `held`.
    static Topic of(Cause cause, int held, int digit, int rod) {
        return switch (cause) {
            case Cause.Setting(Cause.Operand operand, _) -> verb("set." + word(operand), Map.of());
            case Cause.Row(int row, _) -> new Topic(NONE, NONE, Map.of("row", row));
            case Cause.Carry _, Cause.Borrow _ -> new Topic(NONE, NONE, Map.of());
            case Cause.Loan _ -> lead(digit == 1 ? "loan.first" : "loan.more", amount(rod));
            case Cause.LoanReturned _ -> lead("loan-returned", amount(rod));
            case Cause.PartialProduct(_, int first, _, int second) ->
                    lead("partial-product", product(first, second));
            case Cause.MultiplicandCleared _ -> verb("clear.multiplicand", Map.of());
            case Cause.TrialDigit(_, int trial) -> verb("set.trial-digit", digit(trial));
            case Cause.ProductTaken(_, int first, _, int second) ->
                    lead("product-taken", product(first, second));
            case Cause.RevisedDown(_, int revised) ->
                    lead(
                            digit < 0 ? "revised-down.digit" : "revised-down.back",
                            Map.of("digit", revised, "old", revised + 1));
            case Cause.RevisedUp(_, int revised) ->
                    lead(
                            digit > 0 ? "revised-up.digit" : "revised-up.take",
                            Map.of("digit", revised, "old", revised - 1));
            case Cause.RootDigit(int index, int root) ->
                    verb("set.root-digit", Map.of("index", index, "digit", root));
            case Cause.RootProductTaken(_, int first, _, int second) ->
                    lead("root-product", product(first, second));
            case Cause.SquareTaken(_, int root) -> lead("square", power(root, root * root));
            case Cause.HalfSquareTaken(_, int root) ->
                    lead("half-square", power(root, root * root / 2.0));
            case Cause.CubeTaken(_, int root) -> lead("cube", power(root, root * root * root));
            case Cause.Halved _ ->
                    digit < 0
                            ? lead("halved", Map.of("old", held, "half", plain(held / 2.0)))
                            : new Topic(NONE, NONE, Map.of());
            case Cause.Doubled(int index) -> lead("doubled", Map.of("index", index));
            case Cause.TripleSet _ -> lead("triple", Map.of());
            case Cause.AddedBack(_, int first, _, int second) ->
                    lead("added-back", product(first, second));
            case Cause.QuotientCleared _ -> verb("clear.quotient", Map.of());
        };
    }

    private static final Optional<String> NONE = Optional.empty();

    private static Topic lead(String lead, Map<String, ?> values) {
        return new Topic(Optional.of(lead), NONE, values);
    }

    private static Topic verb(String verb, Map<String, ?> values) {
        return new Topic(NONE, Optional.of(verb), values);
    }

    private static Map<String, ?> digit(int digit) {
        return Map.of("digit", digit);
    }

    /// Products have two digits on the frame, and are said so: 06.
    private static Map<String, ?> product(int first, int second) {
        return Map.of(
                "first",
                first,
                "second",
                second,
                "product",
                String.format(Locale.ROOT, "%02d", first * second));
    }

    private static Map<String, ?> power(int digit, Number power) {
        return Map.of("digit", digit, "product", plain(power));
    }

    private static String plain(Number number) {
        return new BigDecimal(number.toString()).stripTrailingZeros().toPlainString();
    }

    private static Map<String, ?> amount(int rod) {
        return Map.of("amount", Numbers.shown(BigDecimal.ONE.scaleByPowerOfTen(rod)));
    }

    private static String word(Cause.Operand operand) {
        return operand.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
