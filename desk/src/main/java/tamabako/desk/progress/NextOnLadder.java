package tamabako.desk.progress;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tamabako.insight.readiness.Forecast;
import tamabako.insight.readiness.NextGrades;
import tamabako.insight.readiness.Outlines;
import tamabako.insight.readiness.Readiness;
import tamabako.insight.readiness.Recalibration;
import tamabako.problems.grade.Ladder;

/// The next grades of the ladder that the teacher has chosen: from the one on that the class book
/// says a pupil works towards, and where it says none, from the first one that does not lie behind
/// the pupil.
final class NextOnLadder {

    private final ChosenLadder chosen;
    private final Outlines outlines;
    private final PastExams exams;

    /// @param exams what came of them corrects the forecasts
    NextOnLadder(ChosenLadder chosen, Outlines outlines, PastExams exams) {
        this.chosen = chosen;
        this.outlines = outlines;
        this.exams = exams;
    }

    Ladder ladder() {
        return chosen.ladder();
    }

    /// How ready a pupil is for the next grade; empty where there is nothing to go by.
    Optional<Readiness> of(Judged pupil) {
        return pupil.answers() == 0 ? Optional.empty() : of(pupil, 1).stream().findFirst();
    }

    /// How ready a pupil is for the next `most` grades.
    List<Readiness> of(Judged pupil, int most) {
        Ladder ladder = ladder();
        Recalibration correction = exams.correction(pupil.gathered().pupil().demo());
        return pupil.forecasts()
                .computeIfAbsent(
                        "%s %d %d %s".formatted(ladder.id(), ladder.hashCode(), most, correction),
                        _ -> forecast(pupil, new Forecast(correction), ladder, most));
    }

    private List<Readiness> forecast(Judged pupil, Forecast forecast, Ladder ladder, int most) {
        OptionalInt aim = AimedGrade.in(ladder, pupil.gathered().pupil().about().grade());
        if (aim.isEmpty()) {
            return new NextGrades(forecast, outlines).of(pupil.standing(), ladder, most);
        }
        return ladder.grades().stream()
                .skip(aim.getAsInt())
                .map(grade -> outlines.of(ladder.id(), grade))
                .flatMap(Optional::stream)
                .limit(most)
                .map(outline -> forecast.of(pupil.standing(), outline))
                .toList();
    }
}
