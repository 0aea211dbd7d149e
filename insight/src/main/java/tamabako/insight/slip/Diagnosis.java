package tamabako.insight.slip;

/// What one answer tells, as numbers for reckoning on: which slips were made how likely, out of how
/// many occasions.
///
/// @param finding the ranking for people
/// @param slips how many slips of each kind and in each move were made, as far as the answer shows;
///   none for a right answer. The kinds of a wrong answer sum to at least 1, and to 2 where two
///   slips were made. Moves count the slips of the hand only: carries, borrows, complements, beads.
/// @param occasions how many occasions the problem gave for each kind, and how many steps it takes
///   by each move
/// @param chance the chance of this answer under the rates that it was weighed by, 0 to 1
public record Diagnosis(Finding finding, Counts slips, Counts occasions, double chance) {}
