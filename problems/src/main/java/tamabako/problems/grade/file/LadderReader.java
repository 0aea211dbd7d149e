package tamabako.problems.grade.file;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import tamabako.problems.grade.Ladder;

/// Reads a whole file.
final class LadderReader {

    private static final int MOST_GRADES = 100;
    private static final List<String> KNOWN =
            List.of("ladder", "name", "about", "sources", "grades");

    private LadderReader() {}

    static LadderFile read(String fileName, String yaml) {
        Mistakes mistakes = new Mistakes(fileName);
        Optional<Ladder> ladder = Nodes.read(yaml, mistakes).map(node -> ladder(node, mistakes));
        return ladder.isPresent() && mistakes.count() == 0
                ? new LadderFile.Read(ladder.get())
                : new LadderFile.Mistaken(mistakes.listed());
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
