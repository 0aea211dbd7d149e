package tamabako.desk.sheet;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tamabako.frame.Technique;
import tamabako.problems.making.ColumnWish;
import tamabako.problems.making.ProductWish;
import tamabako.problems.making.QuotientWish;
import tamabako.problems.making.RootWish;
import tamabako.problems.making.Wish;

/// The address at which the page "Make a sheet" shows a wish.
final class WishAddress {

    private WishAddress() {}

    /// The address of `wish`, with the title, the count and the seed of the form it comes from.
    static String of(Wish wish, WishForm asked, long seed) {
        List<String> pairs = new ArrayList<>();
        fields(wish).forEach((name, value) -> pairs.add(pair(name, value)));
        pairs.add(pair("count", String.valueOf(asked.count())));
        pairs.add(pair("title", asked.form().text("title")));
        pairs.add(pair("seed", String.valueOf(seed)));
        if (wish instanceof ColumnWish columns) {
            columns.allowed().stream()
                    .sorted()
                    .forEach(technique -> pairs.add(pair("technique", technique.word())));
        }
        return "/make?" + String.join("&", pairs);
    }

    private static Map<String, String> fields(Wish wish) {
        return switch (wish) {
            case ColumnWish columns -> fields(columns);
            case ProductWish products ->
                    Map.of(
                            "kind", "product",
                            "multiplicand", String.valueOf(products.multiplicand().most()),
                            "multiplier", String.valueOf(products.multiplier().most()));
            case QuotientWish quotients ->
                    Map.of(
                            "kind", "quotient",
                            "divisor", String.valueOf(quotients.divisor().most()),
                            "quotient", String.valueOf(quotients.quotient().most()));
            case RootWish roots ->
                    Map.of(
                            "kind", "root",
                            "degree", String.valueOf(roots.degree()),
                            "digits", String.valueOf(roots.digits().most()));
        };
    }

    private static Map<String, String> fields(ColumnWish columns) {
        Map<String, String> fields = new TreeMap<>();
        fields.put("kind", "column");
        fields.put("rows", String.valueOf(columns.rows()));
        fields.put("least", String.valueOf(columns.shape().lengths().least()));
        fields.put("most", String.valueOf(columns.shape().lengths().most()));
        fields.put("minus", String.valueOf(columns.signs().leastMinus()));
        fields.put("places", String.valueOf(columns.shape().places()));
        fields.put(
                "practise",
                columns.required().stream()
                        .sorted()
                        .findFirst()
                        .map(Technique::word)
                        .orElse("any"));
        if (columns.mayGoBelowZero()) {
            fields.put("below", "yes");
        }
        return fields;
    }

    private static String pair(String name, String value) {
        return name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
