package tamabako.desk.sheet;

import java.util.List;

/// What the page "Make a sheet" shows.
///
/// @param form the wish as it stands, with its faults
/// @param seed the seed that the problems are made from
/// @param problems the problems; none where the wish cannot be granted
public record MakeView(Form form, long seed, List<Shown> problems) {

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
