package tamabako.problems.making;

import tamabako.problems.Terms;

/// What sort of numbers products and quotients are of.
public sealed interface Numbers {

    /// The most places that an answer is rounded to.
    int MOST_PLACES = 6;

    /// Whole numbers with exact answers.
    record Whole() implements Numbers {}

    /// Plain numbers (mumeisū): a share of the problems has decimals, and answers are rounded half
    /// up.
    ///
    /// @param places the decimal places of the answers, 1 to 6
    /// @param share how many of a hundred problems have decimals, 0 to 100; the others are whole
    ///   and exact
    record Plain(int places, int share) implements Numbers {}

    /// Amounts (meisū), rounded half up to the unit: a share of the problems has a multiplier or
    /// divisor with decimals, or an answer that is rounded.
    ///
    /// @param unit the currency as an ISO 4217 code, such as `JPY`
    /// @param share how many of a hundred problems have decimals, 0 to 100; the others are whole
    ///   and exact
    record Amounts(String unit, int share) implements Numbers {}

    /// As papers have them: three places, decimals in four problems of five.
    static Numbers plain() {
        return new Plain(3, 80);
    }

    /// As papers have them: yen, decimals in four problems of five.
    static Numbers yen() {
        return new Amounts("JPY", 80);
    }

    /// The terms under which such problems are asked.
    default Terms terms() {
        return switch (this) {
            case Whole() -> Terms.PLAIN;
            case Plain(int places, _) -> Terms.PLAIN.withPlaces(places);
            case Amounts(String unit, _) -> Terms.PLAIN.withUnit(unit);
        };
    }

    /// How many of a hundred problems have decimals.
    default int decimals() {
        return switch (this) {
            case Whole() -> 0;
            case Plain(_, int share) -> share;
            case Amounts(_, int share) -> share;
        };
    }

    /// How many of `count` problems have decimals, rounded half up.
    default int decimals(int count) {
        return (count * decimals() + 50) / 100;
    }
}
