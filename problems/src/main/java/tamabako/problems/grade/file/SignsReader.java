package tamabako.problems.grade.file;

import java.util.List;
import java.util.OptionalInt;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.grade.Share;
import tamabako.problems.grade.Signs;
import tamabako.problems.grade.Span;

/// Reads which columns have rows that are taken.
final class SignsReader {

    private static final String FIRST = "first half";
    private static final String SECOND = "second half";
    private static final List<String> ONLY_MIXED = List.of("minus rows", "below zero", "may dip");

    private SignsReader() {}

    static Signs read(Fields place, int count, int rows) {
        if (!place.has("mixed")) {
            ONLY_MIXED.stream()
                    .filter(place::has)
                    .forEach(key ->
                            place.faultAtKey(
                                    key, new Fault.NeedsKey(key, "mixed", Examples.of("mixed"))));
            return Signs.ADDED;
        }
        Share mixed = share(place, "mixed", halves(count));
        Span minusRows = place.span("minus rows", 1, rows - 1);
        Share negative = share(place, "below zero", mixed(mixed, count));
        if (negative.count() > mixed.count()) {
            place.fault("below zero", new Fault.MoreBelowZero(negative.count(), mixed.count()));
            return Signs.ADDED;
        }
        return new Signs(mixed, minusRows, negative, place.yes("may dip"));
    }

    /// How many problems there are, and in each half.
    private record There(int all, int first, int second) {}

    private static There halves(int count) {
        return new There(count, count / 2, count - count / 2);
    }

    private static There mixed(Share mixed, int count) {
        There halves = halves(count);
        return new There(
                mixed.count(),
                mixed.inFirstHalf().orElse(Math.min(halves.first(), mixed.count())),
                mixed.inSecondHalf().orElse(Math.min(halves.second(), mixed.count())));
    }

    private static Share share(Fields place, String key, There there) {
        return place.there(key).map(node -> share(place, key, node, there)).orElse(Share.NONE);
    }

    private static Share share(Fields place, String key, Node node, There there) {
        if (node instanceof MappingNode) {
            Fields halves = Fields.of(key, node, place.mistakes()).knowing(List.of(FIRST, SECOND));
            return Share.halves(
                    half(halves, FIRST, there.first(), key),
                    half(halves, SECOND, there.second(), key));
        }
        int count = place.whole(key, 0, FormatReader.MOST_PROBLEMS);
        if (count > there.all() && !key.equals("below zero")) {
            place.fault(key, new Fault.MoreThanThere(key, count, there.all()));
        }
        return new Share(count, OptionalInt.empty());
    }

    private static int half(Fields halves, String half, int there, String key) {
        int count = halves.whole(half, 0, FormatReader.MOST_PROBLEMS, 0);
        if (count > there) {
            halves.fault(half, new Fault.MoreThanHalf(key, half, count, there));
            return there;
        }
        return count;
    }
}
