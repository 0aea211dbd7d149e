package tamabako.problems.grade.file;

import java.util.HashMap;
import java.util.Map;

/// The names that were given so far by one key; each may be given once.
final class Names {

    private final String key;
    private final Map<String, Integer> lines = new HashMap<>();

    Names(String key) {
        this.key = key;
    }

    /// The name of what stands here, which has to be there.
    String read(Fields place) {
        return place.value(key).map(this::read).orElse("");
    }

    private String read(Value value) {
        String name = value.name();
        int line = Mistakes.line(value.node());
        Integer before = lines.putIfAbsent(name, line);
        if (before != null) {
            value.fault(new Fault.NameTwice(key, name, before));
        }
        return name;
    }
}
