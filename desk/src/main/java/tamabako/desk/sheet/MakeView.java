package tamabako.desk.sheet;

import java.util.List;
import java.util.Optional;

/// What the page "Make a sheet" shows.
///
/// @param form the wish as it stands, with its faults
/// @param seed the seed that the problems are made from
/// @param problems the problems; none where the wish cannot be granted
/// @param nearest the address of a wish close by that can be granted, where one is known
public record MakeView(Form form, long seed, List<Shown> problems, Optional<String> nearest) {

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
    }
}
