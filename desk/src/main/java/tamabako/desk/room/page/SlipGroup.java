package tamabako.desk.room.page;

/// A slip that pupils made in one problem.
///
/// @param pupils how many
/// @param slip its name in the reader's language
/// @param problem the number of the problem
/// @param work the address where the problem is worked bead by bead
public record SlipGroup(int pupils, String slip, String problem, String work) {}
