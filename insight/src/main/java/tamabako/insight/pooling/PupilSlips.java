package tamabako.insight.pooling;

import tamabako.insight.rule.LastingRules;
import tamabako.insight.slip.Evidence;
import tamabako.insight.slip.Rates;

/// What the answers of one pupil show together.
///
/// @param answers how many answers could be read
/// @param wrong how many of them are wrong
/// @param notRead how many were none, or no number
/// @param sum how many slips of each kind were made, out of how many occasions
/// @param own how often this pupil makes each kind of slip
/// @param usual how often pupils in general do
/// @param main the pupil's main slip
/// @param rules wrong rules that the pupil follows
public record PupilSlips(
        int answers,
        int wrong,
        int notRead,
        Evidence.Sum sum,
        Rates own,
        Rates usual,
        MainSlip main,
        LastingRules rules) {}
