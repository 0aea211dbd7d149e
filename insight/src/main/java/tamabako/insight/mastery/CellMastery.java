package tamabako.insight.mastery;

import tamabako.insight.slip.Cell;

/// How a digit goes on, or comes off, what a rod holds.
///
/// @param cell what is held, and what is added or taken
/// @param met how often the pupil has met it
/// @param slips how many slips were made there as far as the answers show
public record CellMastery(Cell cell, int met, double slips) {}
