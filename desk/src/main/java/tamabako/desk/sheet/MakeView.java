package tamabako.desk.sheet;

import java.util.List;
import java.util.Optional;
import tamabako.records.Template;

/// What the page "Make a sheet" shows.
///
/// @param form the wish as it stands, with its faults
/// @param by which of the ways to ask
/// @param seed the seed that the problems are made from
/// @param swaps the problems that were exchanged, as the address has them
/// @param problems the problems; none where the wish cannot be granted
/// @param nearest the address of a wish close by that can be granted, where one is known
/// @param sections what can be chosen of the ladders
/// @param templates the teacher's templates
public record MakeView(
        Form form,
        String by,
        long seed,
        String swaps,
        List<Practised> problems,
        Optional<String> nearest,
        SectionsView sections,
        List<Template> templates) {

    /// The ways to ask.
    public static final List<String> WAYS = List.of("free", "technique", "section");

    /// The kinds of problem, as files and commands name them.
    public static final List<String> KINDS = List.of("column", "product", "quotient", "root");

    /// The techniques, in the order in which they are taught.
    public static final List<String> TECHNIQUES =
            List.of("direct", "five-complement", "ten-complement", "ten-with-five");

    /// What a column may be made to practise.
    public static final List<String> PRACTISED =
            List.of("any", "five-complement", "ten-complement", "ten-with-five");

    /// The roots.
    public static final List<String> DEGREES = List.of("2", "3");

    public MakeView {
        problems = List.copyOf(problems);
        templates = List.copyOf(templates);
    }

    /// Whether the page stands at that way.
    public boolean isBy(String way) {
        return by.equals(way);
    }

    /// Whether a field that is seldom used has something in it, so that it is to be seen at once.
    public boolean asksMore() {
        return List.of("ji", "run", "fewest", "strokes", "answer").stream()
                        .anyMatch(
                                name -> !form.text(name).isBlank() || form.fault(name).isPresent())
                || form.isTicked("customs", "papers");
    }

    /// The strokes of all problems.
    public int strokes() {
        return problems.stream().mapToInt(Practised::strokes).sum();
    }

    /// The expected seconds of all problems.
    public long seconds() {
        return problems.stream().mapToLong(Practised::seconds).sum();
    }
}
