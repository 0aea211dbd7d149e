package tamabako.problems.making.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tamabako.frame.Technique;
import tamabako.problems.Unreadable;
import tamabako.problems.json.ProblemJson;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.Digits;
import tamabako.problems.making.Numbers;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;
import tamabako.problems.making.column.Condition;
import tamabako.problems.making.column.HandCondition;
import tamabako.problems.making.column.Lengths;
import tamabako.problems.making.column.Signs;
import tamabako.problems.making.column.TotalCondition;
import tamabako.problems.making.json.WishFields.Bounds;

/// Reads a wish from JSON, and writes it. The format is told in docs/formats.md.
public final class WishJson {

    private static final List<String> KINDS = List.of("column", "product", "quotient", "root");
    private static final List<String> NUMBERS = List.of("whole", "plain", "amounts");
    private static final List<String> FACTORS =
            List.of("kind", "inAll", "numbers", "places", "decimals", "unit", "customs");
    private static final List<String> COLUMN =
            List.of(
                    "kind",
                    "rows",
                    "digits",
                    "ji",
                    "places",
                    "minus",
                    "lastPlus",
                    "minusRun",
                    "techniques",
                    "require",
                    "belowZero",
                    "carryRun",
                    "strokes",
                    "answerDigits",
                    "strokesWithin",
                    "customs");

    private WishJson() {}

    /// The wish in one JSON object.
    ///
    /// @throws Unreadable if it is none
    public static Wish parse(String text) {
        return read(ProblemJson.tree(text.strip()));
    }

    /// The wish as one line of JSON, which reads back as the same, if every wish in it has a key.
    public static String line(Wish wish) {
        return WrittenWish.of(wish).toString();
    }

    private static Wish read(JsonNode node) {
        WishFields fields = new WishFields(node);
        return switch (fields.word("kind", KINDS)) {
            case "product" -> product(fields);
            case "quotient" -> quotient(fields);
            case "root" -> root(fields);
            default -> column(fields);
        };
    }

    private static Wish column(WishFields fields) {
        fields.allow(COLUMN);
        Bounds digits = fields.bounds("digits", 2);
        OptionalInt inAll = fields.wholeIfAny("ji");
        ColumnWish wish =
                ColumnWish.of(fields.whole("rows", 5), 1)
                        .withLengths(
                                inAll.isPresent()
                                        ? new Lengths.Total(
                                                inAll.getAsInt(), digits.least(), digits.most())
                                        : new Lengths.Between(digits.least(), digits.most()))
                        .withPlaces(fields.whole("places", 0))
                        .with(signs(fields))
                        .allowing(fields.techniques("techniques", EnumSet.allOf(Technique.class)))
                        .requiring(fields.techniques("require", EnumSet.noneOf(Technique.class)));
        wish = belowZero(wish, fields);
        for (Condition condition : conditions(fields)) {
            wish = wish.with(condition);
        }
        OptionalInt within = fields.wholeIfAny("strokesWithin");
        wish = within.isPresent() ? wish.withStrokesWithin(within.getAsInt()) : wish;
        return switch (fields.word("customs", List.of("practice", "papers", "none"))) {
            case "papers" -> wish.withCustomsOfPapers();
            case "none" -> wish;
            default -> wish.withCustomsOfPractice();
        };
    }

    private static Signs signs(WishFields fields) {
        Bounds minus = fields.bounds("minus", 0);
        Signs signs = Signs.minus(minus.least(), minus.most());
        signs = fields.isTrue("lastPlus") ? signs.endingPlus() : signs;
        OptionalInt run = fields.wholeIfAny("minusRun");
        return run.isPresent() ? signs.inRunsOf(run.getAsInt()) : signs;
    }

    private static ColumnWish belowZero(ColumnWish wish, WishFields fields) {
        List<String> known = List.of("never", "any", "once-and-back", "to-the-end");
        return switch (fields.word("belowZero", known)) {
            case "any" -> wish.goingBelowZero(true);
            case "once-and-back" ->
                    wish.with(new TotalCondition.BelowZero(TotalCondition.Dips.ONCE_AND_BACK));
            case "to-the-end" ->
                    wish.with(new TotalCondition.BelowZero(TotalCondition.Dips.TO_THE_END));
            default -> wish;
        };
    }

    private static List<Condition> conditions(WishFields fields) {
        OptionalInt run = fields.wholeIfAny("carryRun");
        Optional<Condition> carry =
                run.isPresent()
                        ? Optional.of(new HandCondition.CarryRun(run.getAsInt()))
                        : Optional.empty();
        Optional<Condition> strokes =
                fields.bounds("strokes")
                        .map(span -> new HandCondition.Strokes(span.least(), span.most()));
        Optional<Condition> answer =
                fields.bounds("answerDigits")
                        .map(span -> new TotalCondition.AnswerLength(span.least(), span.most()));
        return Stream.of(carry, strokes, answer).flatMap(Optional::stream).toList();
    }

    private static Wish product(WishFields fields) {
        allow(fields, "multiplicand", "multiplier");
        Digits multiplicand = digits(fields, "multiplicand", 2);
        Digits multiplier = digits(fields, "multiplier", 1);
        int inAll = fields.whole("inAll", multiplicand.most() + multiplier.most());
        ProductWish wish = ProductWish.inAll(inAll, multiplicand, multiplier).with(numbers(fields));
        return fields.isTrue("customs") ? wish.withUsualCustoms() : wish;
    }

    private static Wish quotient(WishFields fields) {
        allow(fields, "divisor", "quotient");
        Digits divisor = digits(fields, "divisor", 1);
        Digits quotient = digits(fields, "quotient", 2);
        int inAll = fields.whole("inAll", divisor.most() + quotient.most());
        QuotientWish wish = QuotientWish.inAll(inAll, divisor, quotient).with(numbers(fields));
        return fields.isTrue("customs") ? wish.withUsualCustoms() : wish;
    }

    private static Wish root(WishFields fields) {
        fields.allow(List.of("kind", "degree", "digits", "places"));
        return new RootWish(
                fields.whole("degree", 2),
                digits(fields, "digits", 2),
                fields.wholeIfAny("places"));
    }

    private static Numbers numbers(WishFields fields) {
        int share = fields.whole("decimals", 80);
        return switch (fields.word("numbers", NUMBERS)) {
            case "plain" -> new Numbers.Plain(fields.whole("places", 3), share);
            case "amounts" ->
                    new Numbers.Amounts(
                            fields.word("unit", List.of("JPY", "USD", "EUR", "GBP")), share);
            default -> new Numbers.Whole();
        };
    }

    private static Digits digits(WishFields fields, String key, int usual) {
        Bounds bounds = fields.bounds(key, usual);
        return new Digits(bounds.least(), bounds.most());
    }

    private static void allow(WishFields fields, String... own) {
        fields.allow(Stream.concat(FACTORS.stream(), Stream.of(own)).toList());
    }
}
