package tamabako.problems;

/// How the numbers of a problem are told where they do not stand on the sheet as a sum: on the
/// leaves of a slip pad, or in a story.
public sealed interface Told permits PadLine, Story {}
