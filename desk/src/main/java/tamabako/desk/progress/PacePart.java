package tamabako.desk.progress;

import java.util.List;
import java.util.Locale;
import tamabako.insight.pace.PaceWords;
import tamabako.insight.pace.PartPace;
import tamabako.insight.pace.PupilPace;

/// How fast a pupil works.
///
/// @param problems how many times it rests on
/// @param enough whether they are enough to tell
/// @param speed how fast beside the group, in a sentence; or that too little is known
/// @param beside what is slower or faster than the pupil's other work, in sentences
/// @param steps the seconds of each move of which the pupil's own times tell
public record PacePart(
        int problems, boolean enough, String speed, List<String> beside, List<Line> steps) {

    public PacePart {
        beside = List.copyOf(beside);
        steps = List.copyOf(steps);
    }

    /// A move, with the seconds that one step takes, and the interval that holds them nine times in
    /// ten.
    public record Line(String name, String seconds, String low, String high) {}

    static PacePart of(PupilPace pace, Locale language) {
        PaceWords words = PaceWords.of(language);
        List<PartPace> told =
                pace.isEnough() ? pace.parts().stream().filter(PartPace::told).toList() : List.of();
        return new PacePart(
                pace.problems(),
                pace.isEnough(),
                words.say(pace),
                told.stream()
                        .filter(part -> part.besideLow() > 1 || part.besideHigh() < 1)
                        .map(words::say)
                        .toList(),
                told.stream()
                        .filter(part -> part.seconds() > 0)
                        .map(part -> line(part, words))
                        .toList());
    }

    private static Line line(PartPace part, PaceWords words) {
        double perTime = part.seconds() / part.times();
        return new Line(
                words.name(part.part()),
                seconds(part.seconds()),
                seconds(perTime * part.low()),
                seconds(perTime * part.high()));
    }

    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.2f", seconds);
    }
}
