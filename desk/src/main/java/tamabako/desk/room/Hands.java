package tamabako.desk.room;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/// The raised hands of those who have no tablet, as the teacher counted them in a round that is
/// called.
///
/// @param counted by the problem, from 0; at [#BEGAN] how many take part
public record Hands(Map<Integer, Integer> counted) {

    /// The place of how many take part without a tablet.
    public static final int BEGAN = -1;

    /// The most that can be counted.
    static final int MOST = 999;

    static final Hands NONE = new Hands(Map.of());

    public Hands {
        counted = Map.copyOf(counted);
    }

    /// How many were counted there, if they were.
    public Optional<Integer> at(int problem) {
        return Optional.ofNullable(counted.get(problem));
    }

    Hands with(int problem, int hands) {
        Map<Integer, Integer> all = new TreeMap<>(counted);
        all.put(problem, hands);
        return new Hands(all);
    }
}
