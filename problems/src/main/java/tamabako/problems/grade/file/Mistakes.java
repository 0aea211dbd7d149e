package tamabako.problems.grade.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.Node;

/// The mistakes that were found so far in one file.
final class Mistakes {

    private final String file;
    private final List<Mistake> found = new ArrayList<>();

    Mistakes(String file) {
        this.file = file;
    }

    void add(Node node, Fault fault) {
        add(node.getStartMark(), fault);
    }

    void add(Optional<Mark> mark, Fault fault) {
        int line = mark.map(Mark::getLine).orElse(0) + 1;
        int column = mark.map(Mark::getColumn).orElse(0) + 1;
        found.add(new Mistake(file, line, column, fault));
    }

    int count() {
        return found.size();
    }

    /// In the order of the lines; each once, though what is written once may be used often.
    List<Mistake> listed() {
        return found.stream()
                .distinct()
                .sorted(Comparator.comparingInt(Mistake::line).thenComparingInt(Mistake::column))
                .toList();
    }

    static int line(Node node) {
        return node.getStartMark().map(Mark::getLine).orElse(0) + 1;
    }
}
