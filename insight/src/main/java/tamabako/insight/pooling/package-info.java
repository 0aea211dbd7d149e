/// What many answers tell together: how often a pupil makes each kind of slip, how often pupils in
/// general do, and which kind is a pupil's main one.
///
/// One answer seldom tells which of several slips was made; twenty do. Each answer comes as
/// [tamabako.insight.slip.Evidence]: which kinds may have led to it, before any rates are known.
/// [Population] holds how often slips are made in general and how far pupils differ; it can be
/// learned from answers alone, without anybody saying what was wrong in them. [PupilRates] are one
/// pupil's own, drawn toward the population's where the pupil has shown little. [MainSlip] says
/// whether one kind stands out, and keeps silent where it cannot be told from chance.
///
/// One worked example: ten wrong answers, each of which may be a carry left out, a bead or a digit
/// misread, and no other kind fits them all. Each alone gives the carry four tenths; together they
/// leave no doubt.
@NullMarked
package tamabako.insight.pooling;

import org.jspecify.annotations.NullMarked;
