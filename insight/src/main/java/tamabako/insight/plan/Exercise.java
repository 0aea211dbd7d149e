package tamabako.insight.plan;

/// A sort of problem that can be practised.
///
/// @param focus what it is practised for
/// @param section the name of the section that it serves, within the grade
/// @param load what one of its problems holds
public record Exercise(Focus focus, String section, Load load) {}
