/// What an exam asks, as plain values: a [Ladder] is an order of grades, a [Grade] a paper of
/// [Section]s with its time and its [Pass], a section a run of [Batch]es of one [Format] each.
///
/// Grade 3 of an abacus test, for one, has a section of columns: one batch of 10 problems, 10 rows
/// of 6 digits each, 4 of the 10 mixed, two of those in each half, 10 points a problem.
///
/// Where a figure comes from stands beside it as a [Cite], confirmed or not. The package knows no
/// file and no maker: ladders are read from files in `grade.file`.
@NullMarked
package tamabako.problems.grade;

import org.jspecify.annotations.NullMarked;
