package tamabako.problems.grade.file;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/// Turns the text of a file into nodes that know their lines.
final class Nodes {

    private static final int MOST_CHARACTERS = 500_000;
    private static final int DEEPEST = 20;
    private static final LoadSettings SETTINGS = LoadSettings.builder().build();

    private Nodes() {}

    /// The keys of the whole file; empty if that is a mistake.
    static Optional<Node> read(String yaml, Mistakes mistakes) {
        if (yaml.length() > MOST_CHARACTERS) {
            Fault tooLong = new Fault.TooLong(yaml.length(), MOST_CHARACTERS);
            mistakes.add(Optional.empty(), tooLong);
            return Optional.empty();
        }
        try {
            return compose(withoutMark(yaml), mistakes);
        } catch (MarkedYamlEngineException broken) {
            mistakes.add(broken.getProblemMark(), new Fault.NotYaml());
        } catch (YamlEngineException _) {
            mistakes.add(Optional.empty(), new Fault.NotYaml());
        }
        return Optional.empty();
    }

    private static Optional<Node> compose(String yaml, Mistakes mistakes) {
        int depth = 0;
        for (Event event : new Parse(SETTINGS).parseString(yaml)) {
            switch (event) {
                case CollectionStartEvent _ -> depth++;
                case CollectionEndEvent _ -> depth--;
                default -> {}
            }
            if (depth > DEEPEST) {
                mistakes.add(event.getStartMark(), new Fault.TooDeep(DEEPEST));
                return Optional.empty();
            }
        }
        Optional<Node> node =
                new Compose(SETTINGS).composeString(yaml).filter(MappingNode.class::isInstance);
        if (node.isEmpty()) {
            mistakes.add(Optional.empty(), new Fault.NothingThere());
        }
        return node;
    }

    /// Without the mark that some editors put before a text of UTF-8.
    private static String withoutMark(String yaml) {
        return yaml.startsWith("\uFEFF") ? yaml.substring(1) : yaml;
    }
}
