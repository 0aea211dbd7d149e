package tamabako.problems.making.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Digits;
import tamabako.problems.making.Numbers;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;
import tamabako.problems.making.column.Condition;
import tamabako.problems.making.column.DigitCondition;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.Lengths;
import tamabako.problems.making.column.Signs;
import tamabako.problems.making.column.TotalCondition;

/// Writes a wish as the JSON that [WishJson] reads, without what is usual anyway.
final class WrittenWish {

    private final ObjectNode node = JsonNodeFactory.instance.objectNode();

    private WrittenWish() {}

    static ObjectNode of(Wish wish) {
        WrittenWish written = new WrittenWish();
        switch (wish) {
            case ColumnWish column -> written.column(column);
            case ProductWish products -> {
                written.node.put("kind", "product").put("inAll", products.digits());
                written.put("multiplicand", products.multiplicand());
                written.put("multiplier", products.multiplier());
                written.numbers(products.numbers(), !products.customs().isEmpty());
            }
            case QuotientWish quotients -> {
                written.node.put("kind", "quotient").put("inAll", quotients.digits());
                written.put("divisor", quotients.divisor());
                written.put("quotient", quotients.quotient());
                written.numbers(quotients.numbers(), !quotients.customs().isEmpty());
            }
            case RootWish roots -> {
                written.node.put("kind", "root").put("degree", roots.degree());
                written.put("digits", roots.digits());
                roots.places().ifPresent(places -> written.node.put("places", places));
            }
        }
        return written.node;
    }

    private void column(ColumnWish wish) {
        Lengths lengths = wish.shape().lengths();
        node.put("kind", "column").put("rows", wish.rows());
        put("digits", lengths.least(), lengths.most());
        if (lengths instanceof Lengths.Total(int inAll, _, _)) {
            node.put("ji", inAll);
        }
        if (wish.shape().places() > 0) {
            node.put("places", wish.shape().places());
        }
        signs(wish.signs());
        if (wish.allowed().size() < Technique.values().length) {
            put("techniques", wish.allowed());
        }
        if (!wish.required().isEmpty()) {
            put("require", wish.required());
        }
        if (wish.conditions().stream().noneMatch(TotalCondition.BelowZero.class::isInstance)) {
            node.put("belowZero", "any");
        }
        wish.conditions().forEach(this::condition);
        wish.strokesWithin().ifPresent(within -> node.put("strokesWithin", within));
        node.put("customs", customs(wish));
    }

    private void signs(Signs signs) {
        if (signs.mostMinus() == 0) {
            return;
        }
        put("minus", signs.leastMinus(), signs.mostMinus());
        if (signs.lastPlus()) {
            node.put("lastPlus", true);
        }
        if (signs.longestRun() < signs.mostMinus()) {
            node.put("minusRun", signs.longestRun());
        }
    }

    /// A condition with a key of its own; those of technique are written together, and those of
    /// customs by the name of the customs.
    private void condition(Condition condition) {
        switch (condition) {
            case HandCondition.CarryRun(int least, _) -> node.put("carryRun", least);
            case HandCondition.Strokes(int least, int most) -> put("strokes", least, most);
            case TotalCondition.AnswerLength(int least, int most) ->
                    put("answerDigits", least, most);
            case TotalCondition.BelowZero(TotalCondition.Dips dips) -> {
                switch (dips) {
                    case NEVER -> {}
                    case ONCE_AND_BACK -> node.put("belowZero", "once-and-back");
                    case TO_THE_END -> node.put("belowZero", "to-the-end");
                }
            }
            case HandCondition.OnlyTechniques _,
                    HandCondition.TechniqueCount _,
                    TotalCondition.NotRound _,
                    DigitCondition _ -> {}
        }
    }

    /// Which customs a wish was read with: those of papers begin with rows that do not begin alike,
    /// and on practice sheets only whole rows differ.
    private static String customs(ColumnWish wish) {
        if (wish.conditions().stream().anyMatch(DigitCondition.LeadsDiffer.class::isInstance)) {
            return "papers";
        }
        boolean differ =
                wish.conditions().stream().anyMatch(DigitCondition.RowsDiffer.class::isInstance);
        return differ ? "practice" : "none";
    }

    private void numbers(Numbers numbers, boolean hasCustoms) {
        switch (numbers) {
            case Numbers.Whole _ -> {}
            case Numbers.Plain(int places, int share) ->
                    node.put("numbers", "plain").put("places", places).put("decimals", share);
            case Numbers.Amounts(String unit, int share) ->
                    node.put("numbers", "amounts").put("unit", unit).put("decimals", share);
        }
        if (hasCustoms) {
            node.put("customs", true);
        }
    }

    private void put(String key, Digits digits) {
        put(key, digits.least(), digits.most());
    }

    private void put(String key, int least, int most) {
        if (least == most) {
            node.put(key, least);
        } else {
            node.put(key, least + "-" + most);
        }
    }

    private void put(String key, Set<Technique> techniques) {
        ArrayNode words = node.putArray(key);
        techniques.stream().sorted().forEach(technique -> words.add(technique.word()));
    }
}
