package tamabako.desk.sheet;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// Which problems of a sheet were exchanged for others, and how often: `3-2.7-1` says problem 3
/// twice and problem 7 once. It stands in the address, beside the seed.
///
/// @param times how often, by the number of the problem
record Swaps(SortedMap<Integer, Integer> times) {

    static final Swaps NONE = new Swaps(new TreeMap<>());

    /// More than a teacher has patience for.
    private static final int MOST_TIMES = 20;

    private static final Pattern ONE = Pattern.compile("(\\d{1,3})-(\\d{1,2})");

    Swaps {
        times = Collections.unmodifiableSortedMap(new TreeMap<>(times));
    }

    /// Reads what [#toString()] writes; what is none is passed over.
    static Swaps parse(String written) {
        SortedMap<Integer, Integer> read = new TreeMap<>();
        Matcher one = ONE.matcher(written);
        while (one.find() && read.size() < WishForm.MOST_PROBLEMS) {
            int number = Integer.parseInt(one.group(1));
            read.put(number, Math.min(MOST_TIMES, Integer.parseInt(one.group(2))));
        }
        return new Swaps(read);
    }

    /// The same, and problem `number` once more. After the last time it begins anew.
    Swaps plus(int number) {
        SortedMap<Integer, Integer> changed = new TreeMap<>(times);
        changed.merge(number, 1, (before, _) -> before % MOST_TIMES + 1);
        return new Swaps(changed);
    }

    /// Tells each number and how often.
    void each(BiConsumer<Integer, Integer> taker) {
        times.forEach(taker);
    }

    @Override
    public String toString() {
        return times.entrySet().stream()
                .map((Map.Entry<Integer, Integer> one) -> one.getKey() + "-" + one.getValue())
                .collect(Collectors.joining("."));
    }
}
