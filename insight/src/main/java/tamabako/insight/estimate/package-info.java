/// Estimators: what a model's quantities most likely are, given answers or times, and how sure that
/// is.
///
/// A model is a [Likelihood]; [Newton] climbs to its [Peak]; what comes out are [Estimate]s, a
/// value and its standard error. [LogisticRegression] tells chances from features,
/// [ConditionalRasch] and [MarginalRasch] how hard problems are whoever sat them, or how hard their
/// features make them; [CrossedRasch] lets each problem be harder or easier than its features say,
/// and [PermutedDesigns] asks whether the features say anything at all. [GrowthLines] and
/// [CrossedTimes] do the like for times, [KnowledgeTracing] follows one pupil, and [Forecasts]
/// holds forecasts against what came.
///
/// Each is checked against values worked out elsewhere; docs/estimators.md lists them.
///
/// One worked example: 40 pupils of whom 30 have problem A right and 20 problem B give, by
/// conditional likelihood, how much harder B is than A without a word on how able the pupils are.
@NullMarked
package tamabako.insight.estimate;

import org.jspecify.annotations.NullMarked;
