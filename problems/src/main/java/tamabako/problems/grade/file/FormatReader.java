package tamabako.problems.grade.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import tamabako.problems.Terms;
import tamabako.problems.grade.Amounts;
import tamabako.problems.grade.Batch;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Span;

/// Reads the batches of a section, each with the keys of its kind.
final class FormatReader {

    static final int MOST_PROBLEMS = 1000;

    private static final int MOST_LEAVES = 100;
    private static final int MOST_LINES = 10;
    private static final int MOST_DIGITS = 16;
    private static final int MOST_ROOT_DIGITS = 10;

    /// How problems of one kind are read, given how many there are.
    private record Kind(List<String> keys, BiFunction<Fields, Integer, Format> read) {}

    private static final Map<String, Kind> KINDS = kinds();

    private FormatReader() {}

    private static Map<String, Kind> kinds() {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        kinds.put("columns", new Kind(ColumnsReader.KEYS, ColumnsReader::read));
        kinds.put("products", new Kind(FactorsReader.PRODUCT_KEYS, FactorsReader::products));
        kinds.put("quotients", new Kind(FactorsReader.QUOTIENT_KEYS, FactorsReader::quotients));
        kinds.put("roots", new Kind(List.of("degree", "digits"), (place, _) -> roots(place)));
        kinds.put(
                "slip pad",
                new Kind(
                        List.of("leaves", "pad leaves", "lines", "digits", "unit", "places"),
                        (place, _) -> padLines(place)));
        kinds.put("stories", new Kind(List.of("level"), (place, _) -> stories(place)));
        kinds.put("readings", new Kind(List.of("digits"), (place, _) -> readings(place)));
        return kinds;
    }

    /// The batch at `place`; empty if there is a mistake in it.
    static Optional<Batch> batch(Fields place) {
        int before = place.mistakes().count();
        int count = place.whole("count", 1, MOST_PROBLEMS);
        Optional<Kind> kind = place.value("kind").flatMap(FormatReader::kind);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        List<String> known = new ArrayList<>(List.of("count", "kind"));
        known.addAll(kind.get().keys());
        Format format = kind.get().read().apply(place.knowing(known), count);
        return place.mistakes().count() > before
                ? Optional.empty()
                : Optional.of(new Batch(count, format));
    }

    private static Optional<Kind> kind(Value value) {
        Map<String, Optional<Kind>> words = new LinkedHashMap<>();
        KINDS.forEach((word, kind) -> words.put(word, Optional.of(kind)));
        return value.word(words, Optional.empty());
    }

    private static Format roots(Fields place) {
        return new Format.Roots(
                place.whole("degree", 2, 3), place.span("digits", 1, MOST_ROOT_DIGITS));
    }

    private static Format padLines(Fields place) {
        int leaves = place.whole("leaves", 2, MOST_LEAVES);
        int padLeaves = place.whole("pad leaves", 2, MOST_LEAVES);
        if (padLeaves < leaves) {
            place.fault("pad leaves", new Fault.PadTooThin(leaves, padLeaves));
        }
        Span digits = place.span("digits", 1, MOST_DIGITS);
        return new Format.PadLines(
                leaves, padLeaves, place.whole("lines", 1, MOST_LINES), digits, amounts(place));
    }

    private static Format stories(Fields place) {
        return new Format.Stories(place.value("level").map(Value::name).orElse(""));
    }

    private static Format readings(Fields place) {
        return new Format.Readings(place.span("digits", 1, MOST_DIGITS));
    }

    /// Currency and decimals of rows.
    static Amounts amounts(Fields place) {
        int places = place.whole("places", 0, Terms.MOST_PLACES, 0);
        return new Amounts(place.maybe("unit").map(Value::currency), places);
    }
}
