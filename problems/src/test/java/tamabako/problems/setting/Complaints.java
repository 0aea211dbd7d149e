package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/// What a check found wrong.
final class Complaints {

    private final List<String> all = new ArrayList<>();

    /// Complains in the words of `parts`, unless something `holds`.
    void unless(boolean holds, Object... parts) {
        if (!holds) {
            all.add(Arrays.stream(parts).map(String::valueOf).collect(Collectors.joining(" ")));
        }
    }

    void addAll(List<String> others) {
        all.addAll(others);
    }

    List<String> all() {
        return List.copyOf(all);
    }
}
