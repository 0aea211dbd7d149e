package tamabako.problems.grade.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tamabako.problems.Terms;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Format.Answers;
import tamabako.problems.grade.Format.Rounded;
import tamabako.problems.grade.Span;

/// Reads products and quotients.
final class FactorsReader {

    static final List<String> PRODUCT_KEYS = keys("multiplicand", "multiplier");
    static final List<String> QUOTIENT_KEYS = keys("divisor", "quotient");

    private static final int MOST_DIGITS = 15;

    private FactorsReader() {}

    private static List<String> keys(String first, String second) {
        List<String> keys = new ArrayList<>(List.of("in all", first, second));
        keys.addAll(List.of("unit", "decimals", "places", "rounded up", "rounded down"));
        return keys;
    }

    static Format products(Fields place, int count) {
        Span multiplicand = place.span("multiplicand", 1, MOST_DIGITS);
        Span multiplier = place.span("multiplier", 1, MOST_DIGITS);
        Span inAll = inAll(place, "multiplicand", multiplicand, "multiplier", multiplier);
        return new Format.Products(inAll, multiplicand, multiplier, answers(place, count));
    }

    static Format quotients(Fields place, int count) {
        Span divisor = place.span("divisor", 1, MOST_DIGITS);
        Span quotient = place.span("quotient", 1, MOST_DIGITS);
        Span inAll = inAll(place, "divisor", divisor, "quotient", quotient);
        return new Format.Quotients(inAll, divisor, quotient, answers(place, count));
    }

    /// The digits in all, which every length of the one number must reach with some of the other.
    private static Span inAll(
            Fields place, String first, Span firstDigits, String second, Span secondDigits) {
        Span reach = firstDigits.plus(secondDigits);
        Span inAll = place.maybe("in all").map(v -> v.span(2, 2 * MOST_DIGITS)).orElse(reach);
        if (inAll.least() < reach.least() || inAll.most() > reach.most()) {
            place.fault(
                    "in all",
                    new Fault.OtherInAll(inAll, first, firstDigits, second, secondDigits));
        }
        return inAll;
    }

    private static Answers answers(Fields place, int count) {
        Optional<String> unit = place.maybe("unit").map(Value::currency);
        int decimals = place.whole("decimals", 0, FormatReader.MOST_PROBLEMS, 0);
        int up = place.whole("rounded up", 0, FormatReader.MOST_PROBLEMS, 0);
        int down = place.whole("rounded down", 0, FormatReader.MOST_PROBLEMS, 0);
        if (decimals > count) {
            place.fault("decimals", new Fault.MoreThanThere("decimals", decimals, count));
        }
        if (up + down > count) {
            place.fault("rounded up", new Fault.MoreThanThere("rounded up", up + down, count));
        }
        if (up + down > 0 && !place.has("places")) {
            String key = up > 0 ? "rounded up" : "rounded down";
            place.faultAtKey(key, new Fault.NeedsKey(key, "places", Examples.of("places")));
        }
        Optional<Rounded> rounded =
                place.maybe("places")
                        .map(value -> new Rounded(value.whole(0, Terms.MOST_PLACES), up, down));
        return new Answers(unit, decimals, rounded);
    }
}
