/// What a pupil has mastered: how often each move of the hand goes wrong, how sure that is, and
/// whether it is seldom enough.
///
/// A [MasteryTally] gathers the answers of one pupil, right ones too, each as a [MasteryAnswer].
/// Which slip stands behind a wrong answer is open; so all that are possible are weighed by the
/// pupil's own rates, which they tell of in turn ([StrandFit]). The model: a problem is right with
/// chance `exp(-sum(n * rate))` over the steps `n` of each move and the other occasions to slip,
/// and the logarithm of a rate is the usual one, plus how careful the pupil is, plus how the pupil
/// is with just this move. Where a pupil has shown little, the estimate stays near the pupil's
/// other moves and near pupils in general ([MasteryPopulation]). Old answers count less.
///
/// [Demand] says how seldom is seldom enough: what the problems of a grade ask. Then [PupilMastery]
/// says of each move: mastered, not yet, or that it cannot be said before so many problems more.
///
/// One worked example: a pupil took 9 by its complement 400 times and about 4 slips were made
/// there, 10 in 1000; the mark is 5 in 1000. The rate is 4 to 18 in 1000 with nine chances in ten,
/// so nothing is said yet.
@NullMarked
package tamabako.insight.mastery;

import org.jspecify.annotations.NullMarked;
