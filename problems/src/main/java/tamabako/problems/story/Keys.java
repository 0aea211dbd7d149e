package tamabako.problems.story;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import tamabako.problems.story.UnreadableStory.Fault;

/// Keys and values at one place of a file.
final class Keys {

    private final Node node;
    private final Map<String, Node> values = new LinkedHashMap<>();

    /// The keys at `node`; any key where `known` is empty.
    Keys(Node node, List<String> known) {
        this.node = node;
        if (!(node instanceof MappingNode mapping)) {
            throw at(node, new Fault.OtherShape("grade: 3"));
        }
        for (NodeTuple tuple : mapping.getValue()) {
            String key = one(tuple.getKeyNode());
            if (!known.isEmpty() && !known.contains(key)) {
                throw at(tuple.getKeyNode(), new Fault.UnknownKey(key, known));
            }
            if (values.put(key, tuple.getValueNode()) != null) {
                throw at(tuple.getKeyNode(), new Fault.NotAName(key));
            }
        }
    }

    List<String> keys() {
        return List.copyOf(values.keySet());
    }

    /// The value of `key`, which has to be there.
    Node node(String key, String example) {
        return Optional.ofNullable(values.get(key)).orElseThrow(() -> missing(key, example));
    }

    String text(String key, String example) {
        return one(node(key, example));
    }

    /// The list at `key`, which has to be there.
    List<Node> list(String key, String example) {
        if (!(node(key, example) instanceof SequenceNode list)) {
            throw at(node(key, example), new Fault.OtherShape(example));
        }
        return list.getValue();
    }

    /// The list at `key`, empty where there is none.
    List<Node> maybe(String key) {
        return values.containsKey(key) ? list(key, key + ":") : List.of();
    }

    UnreadableStory missing(String key, String example) {
        return at(node, new Fault.MissingKey(key, example));
    }

    static String one(Node node) {
        if (!(node instanceof ScalarNode scalar)) {
            throw at(node, new Fault.OtherShape("grade: 3"));
        }
        return scalar.getValue();
    }

    static UnreadableStory at(Node node, Fault fault) {
        return new UnreadableStory(node.getStartMark().map(Mark::getLine).orElse(0) + 1, fault);
    }
}
