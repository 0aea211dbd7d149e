package tamabako.problems.grade.file;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.grade.Ladder;

/// Reads a whole file.
final class LadderReader {

    private static final int MOST_CHARACTERS = 500_000;
    private static final int MOST_GRADES = 100;
    private static final List<String> KNOWN =
            List.of("ladder", "name", "about", "sources", "grades");

    private LadderReader() {}

    static LadderFile read(String fileName, String yaml) {
        Mistakes mistakes = new Mistakes(fileName);
        Optional<Ladder> ladder = compose(yaml, mistakes).map(node -> ladder(node, mistakes));
        return ladder.isPresent() && mistakes.count() == 0
                ? new LadderFile.Read(ladder.get())
                : new LadderFile.Mistaken(mistakes.listed());
    }

    private static Optional<Node> compose(String yaml, Mistakes mistakes) {
        if (yaml.length() > MOST_CHARACTERS) {
            Fault tooLong = new Fault.TooLong(yaml.length(), MOST_CHARACTERS);
            mistakes.add(Optional.empty(), tooLong);
            return Optional.empty();
        }
        try {
            LoadSettings settings = LoadSettings.builder().build();
            Optional<Node> node = new Compose(settings).composeString(withoutMark(yaml));
            if (node.isEmpty()) {
                mistakes.add(Optional.empty(), new Fault.NothingThere());
            }
            return node;
        } catch (MarkedYamlEngineException broken) {
            mistakes.add(broken.getProblemMark(), new Fault.NotYaml());
        } catch (YamlEngineException _) {
            mistakes.add(Optional.empty(), new Fault.NotYaml());
        }
        return Optional.empty();
    }

    /// Without the mark that some editors put before a text of UTF-8.
    private static String withoutMark(String yaml) {
        return yaml.startsWith("\uFEFF") ? yaml.substring(1) : yaml;
    }

    private static Ladder ladder(Node node, Mistakes mistakes) {
        Fields fields = Fields.of("ladder", node, mistakes).knowing(KNOWN);
        GradeReader grades = new GradeReader(Sources.read(fields));
        return new Ladder(
                fields.value("ladder").map(Value::name).orElse(""),
                Labels.read(fields, "name"),
                Labels.read(fields, "about"),
                fields.items("grades", MOST_GRADES).stream()
                        .map(grade -> Fields.of("grades", grade, mistakes))
                        .map(grades::read)
                        .flatMap(Optional::stream)
                        .toList());
    }
}
