package tamabako.desk.progress;

import java.util.List;
import java.util.Locale;
import tamabako.insight.readiness.ForecastsHeld;
import tamabako.insight.readiness.HeldWords;

/// How well forecasts held, for the teacher.
///
/// @param said in sentences
/// @param groups exams of which nearly the same chance was told, from the lowest up
public record HeldPart(List<String> said, List<Group> groups) {

    public HeldPart {
        said = List.copyOf(said);
        groups = List.copyOf(groups);
    }

    /// A group of exams.
    ///
    /// @param said so many foretold, so many passed, in a sentence
    /// @param told the mean chance told, in hundredths
    /// @param passed the part that passed, in hundredths
    public record Group(String said, long told, long passed) {}

    static HeldPart of(ForecastsHeld held, Locale language) {
        HeldWords words = HeldWords.of(language);
        return new HeldPart(
                words.say(held),
                held.groups().stream()
                        .map(group ->
                                new Group(
                                        words.say(group),
                                        Math.round(100 * group.told()),
                                        Math.round(100.0 * group.passed() / group.exams())))
                        .toList());
    }
}
