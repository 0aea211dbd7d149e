package tamabako.problems.grade.file;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tamabako.frame.Technique;
import tamabako.problems.grade.Beadwork;
import tamabako.problems.grade.Beadwork.RunningOn;
import tamabako.problems.grade.Format;
import tamabako.problems.grade.Lengths;
import tamabako.problems.grade.Signs;

/// Reads columns.
final class ColumnsReader {

    static final List<String> KEYS =
            List.of(
                    "rows",
                    "digits",
                    "ji",
                    "lengths",
                    "mixed",
                    "minus rows",
                    "below zero",
                    "may dip",
                    "unit",
                    "places",
                    "techniques",
                    "each has",
                    "in taking",
                    "running carries");

    private static final Map<String, Technique> TECHNIQUES =
            Words.of(Technique.values(), Technique::word);
    private static final Map<String, RunningOn> RUNNING = Words.of(RunningOn.values());

    private ColumnsReader() {}

    static Format read(Fields place, int count) {
        Lengths lengths = LengthsReader.read(place);
        Signs signs = SignsReader.read(place, count, lengths.rows());
        return new Format.Columns(lengths, signs, FormatReader.amounts(place), beadwork(place));
    }

    private static Beadwork beadwork(Fields place) {
        Set<Technique> allowed = techniques(place, "techniques");
        if (allowed.isEmpty()) {
            allowed.addAll(Beadwork.ANY.allowed());
        }
        Set<Technique> required = techniques(place, "each has");
        RunningOn runningOn = place.word("running carries", RUNNING, RunningOn.ALLOWED);
        if (!allowed.containsAll(required)) {
            required.removeAll(allowed);
            place.fault("each has", new Fault.RequiredNotAllowed(required));
            return Beadwork.ANY;
        }
        return new Beadwork(allowed, required, place.yes("in taking"), runningOn);
    }

    private static Set<Technique> techniques(Fields place, String key) {
        Set<Technique> found = EnumSet.noneOf(Technique.class);
        for (Value word : place.words(key, TECHNIQUES.size())) {
            found.add(word.word(TECHNIQUES, Technique.DIRECT));
        }
        return found;
    }
}
