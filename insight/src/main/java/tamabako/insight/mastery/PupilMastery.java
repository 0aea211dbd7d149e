package tamabako.insight.mastery;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import tamabako.insight.pooling.Manner;

/// What the answers of one pupil show of mastery, worked in one manner.
///
/// @param manner how they were worked
/// @param answers how many answers could be read
/// @param wrong how many of them are wrong
/// @param notRead how many were none, or no number
/// @param moves all nine moves; none for work in the head, where no bead moves
/// @param skills the skills of multiplying and dividing that were called for; none for work in the
///   head
/// @param kinds the kinds of problem that were met
/// @param cells the 180 things that a hand does on a rod; none for work in the head
/// @param posterior how often the pupil slips, for reckoning on
public record PupilMastery(
        Manner manner,
        int answers,
        int wrong,
        int notRead,
        List<MoveMastery> moves,
        List<SkillMastery> skills,
        List<KindMastery> kinds,
        List<CellMastery> cells,
        SlipPosterior posterior) {

    public PupilMastery {
        moves = List.copyOf(moves);
        skills = List.copyOf(skills);
        kinds = List.copyOf(kinds);
        cells = List.copyOf(cells);
    }

    /// The move that goes wrong most often beside the middle pupil, where any step was met. It may
    /// be chance: see [MoveMastery#statement()].
    public Optional<MoveMastery> weakest() {
        return moves.stream()
                .filter(move -> move.steps() > 0)
                .max(Comparator.comparingDouble(move -> move.rate() / move.usual()));
    }
}
