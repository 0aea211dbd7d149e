package tamabako.desk.command;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import tamabako.insight.mastery.Demand;
import tamabako.insight.slip.EventTable;
import tamabako.insight.slip.Rates;
import tamabako.problems.Mode;
import tamabako.problems.Problem;
import tamabako.problems.grade.Grade;
import tamabako.problems.setting.PaperId;
import tamabako.problems.setting.PaperMade;
import tamabako.problems.setting.PaperMaker;
import tamabako.problems.words.ProblemWords;

/// The options that say what is asked of a pupil: a grade of a ladder.
final class DemandOptions {

    /// The paper is only looked at, never printed.
    private static final PaperId UNPRINTED = PaperId.draw(() -> 0);

    /// One paper tells what a grade asks; which one, makes little difference.
    private static final long SEED = 1;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--ladder",
            paramLabel = "LADDER",
            description = "What is asked: a shipped ladder, or its file (with --grade).")
    private Optional<String> ladder = Optional.empty();

    @Option(
            names = "--grade",
            paramLabel = "GRADE",
            description = "The grade of the ladder; else what each pupil's own problems ask.")
    private Optional<String> grade = Optional.empty();

    /// What is asked; empty for what each pupil's own problems ask.
    ///
    /// @throws ParameterException if there is no such ladder or grade, or one option is missing
    Optional<Demand> demand() throws IOException {
        if (ladder.isEmpty() && grade.isEmpty()) {
            return Optional.empty();
        }
        if (ladder.isEmpty() || grade.isEmpty()) {
            throw refuse("--ladder and --grade go together: give both, or neither.");
        }
        LadderSource source = LadderSource.of(spec, ladder.get());
        Grade asked = source.grade(spec, grade.get());
        return switch (PaperMaker.of(source.ladder().id(), asked)
                .make(UNPRINTED, SEED, List.of())) {
            case PaperMade.Found(var paper, long _) -> Optional.of(demand(asked, paper.problems()));
            case PaperMade.NotMade(PaperMade.Reason reason) ->
                    throw refuse(ProblemWords.of(Locale.ENGLISH).say(reason));
        };
    }

    private Demand demand(Grade asked, List<Problem> problems) {
        List<EventTable> worked =
                problems.stream()
                        .filter(problem -> problem.terms().mode() == Mode.FRAME)
                        .map(EventTable::of)
                        .toList();
        if (worked.isEmpty()) {
            throw refuse(
                    "The grade %s has no problem for the frame. Give a grade that is worked on it."
                            .formatted(asked.id()));
        }
        return Demand.of(worked, Rates.shipped());
    }

    private ParameterException refuse(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
