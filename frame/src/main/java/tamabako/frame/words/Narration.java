package tamabako.frame.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tamabako.frame.Cause;
import tamabako.frame.Step;
import tamabako.frame.Trace;

/// Tells a whole trace, one sentence a step.
final class Narration {

    private final Phrases phrases;
    private final Saying saying;
    private Optional<Step> last = Optional.empty();
    private OptionalInt row = OptionalInt.empty();

    private Narration(Phrases phrases, Saying saying) {
        this.phrases = phrases;
        this.saying = saying;
    }

    /// The sentences of `trace`, one for each of its steps.
    static List<String> of(Trace trace, Phrases phrases) {
        boolean column = trace.steps().stream().allMatch(step -> isOfColumn(step.cause().entry()));
        RodNames names =
                column
                        ? new RodNames.ByPlace(phrases)
                        : new RodNames.ByLetter(phrases, trace.start());
        Narration narration = new Narration(phrases, new Saying(phrases, names));
        List<String> said = new ArrayList<>();
        for (Entry entry : Entry.of(trace.steps())) {
            said.addAll(narration.tell(entry));
        }
        return List.copyOf(said);
    }

    private List<String> tell(Entry entry) {
        Step main = entry.main();
        List<String> said = saying.together(entry);
        if (!goesOn(main)) {
            said.set(0, saying.withLead(saying.lead(main), said.getFirst()));
        }
        opening(main.cause().entry())
                .ifPresent(opening ->
                        said.set(0, saying.withLead(Optional.of(opening), said.getFirst())));
        last = Optional.of(main);
        return said;
    }

    /// What is said where a new row or the halving begins.
    private Optional<String> opening(Cause cause) {
        OptionalInt before = row;
        row = row(cause);
        if (row.isPresent() && !row.equals(before)) {
            return Optional.of(phrases.say("row-begins", Map.of("row", row.getAsInt())));
        }
        boolean goesOn = last.filter(step -> step.cause() instanceof Cause.Halved).isPresent();
        return cause instanceof Cause.Halved && !goesOn
                ? Optional.of(phrases.say("halving-begins", Map.of()))
                : Optional.empty();
    }

    /// Whether `main` goes on with what the last entry did, so that nothing has to lead into it.
    private boolean goesOn(Step main) {
        return last.filter(step -> step.cause().equals(main.cause()))
                .filter(step -> step.digit() > 0 == main.digit() > 0)
                .isPresent();
    }

    private static boolean isOfColumn(Cause cause) {
        return switch (cause) {
            case Cause.Setting(Cause.Operand operand, _) -> operand == Cause.Operand.FIRST_ROW;
            default -> row(cause).isPresent();
        };
    }

    private static OptionalInt row(Cause cause) {
        return switch (cause) {
            case Cause.Row(int row, _) -> OptionalInt.of(row);
            case Cause.Loan(int row) -> OptionalInt.of(row);
            case Cause.LoanReturned(int row) -> OptionalInt.of(row);
            default -> OptionalInt.empty();
        };
    }
}
