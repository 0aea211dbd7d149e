package tamabako.problems.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import tamabako.problems.effort.Effort;

/// A feature that the search for equal forms watches, of the paper as a whole or of one section.
///
/// @param section the place of the section in the paper, or [#WHOLE]
record Watch(FormFeature feature, int section) {

    /// The paper as a whole.
    static final int WHOLE = -1;

    /// How far strokes and seconds of one section may be from the mean.
    private static final double SECTION_SHARE = 0.01;

    private static final double SECTION_LEAST = 2;

    /// A section of fewer pieces is too coarse to be equal by itself.
    private static final int FEWEST_PIECES = 5;

    /// `features` of the paper, and strokes and seconds of each section that has enough pieces.
    static List<Watch> all(List<FormFeature> features, PaperDraft draft) {
        List<Watch> watched = new ArrayList<>(whole(features));
        int sections = draft.sections().size();
        IntStream.range(0, sections > 1 ? sections : 0)
                .filter(section -> draft.sections().get(section).order().size() >= FEWEST_PIECES)
                .forEach(section -> {
                    watched.add(new Watch(inSection(FormFeature.STROKES), section));
                    watched.add(new Watch(inSection(FormFeature.SECONDS), section));
                });
        return watched;
    }

    /// `features` of the paper.
    static List<Watch> whole(List<FormFeature> features) {
        return features.stream().map(feature -> new Watch(feature, WHOLE)).toList();
    }

    private static FormFeature inSection(FormFeature feature) {
        return feature.within(SECTION_SHARE, SECTION_LEAST);
    }

    /// How much a piece of a section adds.
    double of(Piece piece, int ofSection, Effort effort) {
        return section == WHOLE || section == ofSection
                ? feature.measure().applyAsDouble(piece.problems(), effort)
                : 0;
    }
}
