package tamabako.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import tamabako.frame.Habits;
import tamabako.frame.Step;
import tamabako.frame.Trace;
import tamabako.frame.words.StepWords;

/// One step as people read it.
///
/// @param before the digits of the rods from the left
/// @param after the digits afterwards
/// @param rodFromLeft the rod that is worked on, from 0
/// @param label what asked for the step, such as "row 2"
/// @param brief the bead formula, such as `+8 = −2 +10`
/// @param say the teacher's sentence
/// @param fingers which fingers move which beads
/// @param parts the figures of the written sum that the step belongs to, see [SumFigures]
public record StepNote(
        String before,
        String after,
        int rodFromLeft,
        String label,
        String brief,
        String say,
        String fingers,
        List<String> parts) {

    public StepNote {
        parts = List.copyOf(parts);
    }

    /// Notes of every step of a trace of `worked`, in `language`.
    static List<StepNote> all(Worked worked, Trace trace, Locale language) {
        StepWords words = StepWords.of(language);
        List<String> states = Worked.states(trace);
        List<String> said = words.say(trace);
        SumFigures figures = new SumFigures(worked.problem());
        List<StepNote> notes = new ArrayList<>();
        for (int i = 0; i < trace.steps().size(); i++) {
            Step step = trace.steps().get(i);
            notes.add(
                    new StepNote(
                            states.get(i),
                            states.get(i + 1),
                            trace.start().highest() - step.rod(),
                            words.label(step.cause().entry()),
                            words.brief(step, worked.habits().carryOrder()),
                            said.get(i),
                            fingers(step, words, worked.habits()),
                            figures.parts(step.cause())));
        }
        return notes;
    }

    private static String fingers(Step step, StepWords words, Habits habits) {
        return step.motions().stream()
                .map(motion -> words.motion(motion, habits.fingering()))
                .collect(Collectors.joining(" → "));
    }
}
