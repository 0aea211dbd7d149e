package tamabako.problems.grade.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import tamabako.problems.Unreadable;
import tamabako.problems.grade.Span;

/// Keys with their values, as they stand at one place of a file.
///
/// Every `read...` of a key that is not there and of a value that does not fit is a mistake; see
/// [Value].
final class Fields {

    private final String key;
    private final Node node;
    private final Mistakes mistakes;
    private final Map<String, ScalarNode> keys = new LinkedHashMap<>();
    private final Map<String, Node> values = new LinkedHashMap<>();

    private Fields(String key, Node node, Mistakes mistakes) {
        this.key = key;
        this.node = node;
        this.mistakes = mistakes;
    }

    /// The keys at `node`, which stands after `key`.
    static Fields of(String key, Node node, Mistakes mistakes) {
        Fields fields = new Fields(key, node, mistakes);
        if (node instanceof MappingNode mapping) {
            mapping.getValue().forEach(fields::put);
        } else {
            fields.fault(
                    node instanceof ScalarNode scalar && Colons.misplaced(scalar.getValue())
                            ? new Fault.ColonWithoutSpace(Unreadable.shown(scalar.getValue()))
                            : new Fault.NotKeys(key, Examples.of(key)));
        }
        return fields;
    }

    private void put(NodeTuple tuple) {
        if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
            mistakes.add(tuple.getKeyNode(), new Fault.NotOneValue("", Examples.of("count")));
            return;
        }
        String word = key.getValue().strip();
        ScalarNode before = keys.putIfAbsent(word, key);
        if (before == null) {
            values.put(word, tuple.getValueNode());
        } else {
            mistakes.add(key, new Fault.KeyTwice(word, Mistakes.line(before)));
        }
    }

    /// The same, where every key has to be one of `known`.
    Fields knowing(List<String> known) {
        keys.forEach((word, key) -> {
            if (!known.contains(word)) {
                mistakes.add(
                        key,
                        Colons.misplaced(word)
                                ? new Fault.ColonWithoutSpace(Unreadable.shown(word))
                                : new Fault.UnknownKey(Unreadable.shown(word), known));
            }
        });
        return this;
    }

    /// Whether there are keys here at all; if not, that is told already.
    boolean areThere() {
        return node instanceof MappingNode;
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    List<String> listKeys() {
        return List.copyOf(values.keySet());
    }

    /// A key, to be read as a value itself.
    Value key(String key) {
        return new Value(this.key, Objects.requireNonNull(keys.get(key)), mistakes);
    }

    Mistakes mistakes() {
        return mistakes;
    }

    /// A mistake of the whole place.
    void fault(Fault fault) {
        mistakes.add(node, fault);
    }

    /// A mistake at the value of `key`, or of the whole place where there is none.
    void fault(String key, Fault fault) {
        mistakes.add(values.getOrDefault(key, node), fault);
    }

    /// A mistake at `key` itself.
    void faultAtKey(String key, Fault fault) {
        ScalarNode found = keys.get(key);
        mistakes.add(found == null ? node : found, fault);
    }

    /// What stands after `key`, which has to be there.
    Optional<Node> needed(String key) {
        if (!has(key) && areThere()) {
            fault(new Fault.MissingKey(key, Examples.of(key)));
        }
        return there(key);
    }

    /// What stands after `key`, if anything does.
    Optional<Node> there(String key) {
        return Optional.ofNullable(values.get(key));
    }

    /// The one value of `key`, which has to be there.
    Optional<Value> value(String key) {
        return needed(key).flatMap(found -> value(key, found));
    }

    /// The one value of `key`, if it is there.
    Optional<Value> maybe(String key) {
        return there(key).flatMap(found -> value(key, found));
    }

    int whole(String key, int least, int most) {
        return value(key).map(value -> value.whole(least, most)).orElse(least);
    }

    int whole(String key, int least, int most, int otherwise) {
        return maybe(key).map(value -> value.whole(least, most)).orElse(otherwise);
    }

    Span span(String key, int least, int most) {
        return value(key).map(value -> value.span(least, most)).orElse(Span.of(least));
    }

    boolean yes(String key) {
        return maybe(key).map(Value::yes).orElse(false);
    }

    <E> E word(String key, Map<String, E> words, E otherwise) {
        return maybe(key).map(value -> value.word(words, otherwise)).orElse(otherwise);
    }

    /// The items of the list at `key`, which has to be there; 1 to `most` of them.
    List<Node> items(String key, int most) {
        return needed(key).map(found -> items(key, found, most)).orElse(List.of());
    }

    /// The single values of the list at `key`, if it is there.
    List<Value> words(String key, int most) {
        List<Value> found = new ArrayList<>();
        there(key)
                .ifPresent(list ->
                        items(key, list, most)
                                .forEach(item -> value(key, item).ifPresent(found::add)));
        return found;
    }

    private Optional<Value> value(String key, Node found) {
        if (found instanceof ScalarNode scalar) {
            return Optional.of(new Value(key, scalar, mistakes));
        }
        mistakes.add(found, new Fault.NotOneValue(key, Examples.of(key)));
        return Optional.empty();
    }

    private List<Node> items(String key, Node found, int most) {
        if (!(found instanceof SequenceNode list)) {
            mistakes.add(found, new Fault.NotAList(key, Examples.of(key)));
            return List.of();
        }
        List<Node> items = list.getValue();
        if (items.isEmpty() || items.size() > most) {
            mistakes.add(found, new Fault.NotSoMany(key, items.size(), most));
            return List.of();
        }
        return items;
    }
}
