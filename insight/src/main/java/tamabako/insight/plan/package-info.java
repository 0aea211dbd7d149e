/// What a pupil should practise next, and why.
///
/// A problem is worth what it does for the chance to pass: every time a move or a kind of work is
/// met, slips in it become fewer ([Learning]); that makes the sections in which it is met go better
/// ([Need]); and that raises the chance, as the forecast has it. What a pupil lacks is not known
/// but believed, so for each problem one of the pupils that this one may be is drawn, and what is
/// worth most for that one is chosen (Thompson sampling). At least a quarter of the problems are as
/// in the exam, no two that stand together have the same [Focus], and problems are so long that
/// about three in four go right ([Planner]).
///
/// One worked example: of a pupil's slips in columns a half come from adding over ten with the
/// five, and of a hundred steps in an exam's column ten are such. Columns that are rich in it have
/// twenty-five in a hundred. Then such a column takes away two and a half times as many of these
/// slips as one as in the exam, and is practised first.
@NullMarked
package tamabako.insight.plan;

import org.jspecify.annotations.NullMarked;
