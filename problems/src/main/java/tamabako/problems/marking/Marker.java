package tamabako.problems.marking;

import java.math.BigDecimal;
import java.util.Optional;
import tamabako.problems.Answer;
import tamabako.problems.Problem;
import tamabako.problems.Quotient;
import tamabako.problems.Unreadable;
import tamabako.problems.marking.Mark.Fault;
import tamabako.problems.marking.Mark.Form;

/// Marks written answers.
public final class Marker {

    private Marker() {}

    /// What became of `written` as an answer to `problem`. The value is looked at first, then the
    /// form.
    ///
    /// A remainder is written `14 r 2`, `14 あまり 2` or `14…2`. A quotient needs it where it is not
    /// zero; with a root it may be left out.
    public static Mark mark(Problem problem, String written, WritingRules rules) {
        if (written.isBlank()) {
            return new Mark.Empty();
        }
        Optional<Reading> found = Reading.of(written, problem.terms().unit(), rules);
        if (found.isEmpty()) {
            return new Mark.Unclear(Unreadable.shown(written.strip()));
        }
        Reading reading = found.get();
        Optional<Fault> fault = fault(problem, reading);
        if (fault.isPresent()) {
            return new Mark.Wrong(reading.value(), fault.get());
        }
        return form(problem, reading)
                .<Mark>map(form -> new Mark.WrongForm(reading.value(), form))
                .orElseGet(Mark.Right::new);
    }

    private static Optional<Fault> fault(Problem problem, Reading reading) {
        Answer answer = problem.answer();
        if (reading.value().compareTo(answer.value()) != 0) {
            return Optional.of(new Fault.OtherValue(reading.value()));
        }
        if (answer.remainder().isEmpty()) {
            return Optional.empty();
        }
        BigDecimal left = answer.remainder().get();
        if (reading.remainder().isEmpty()) {
            boolean needed = left.signum() != 0 && problem instanceof Quotient;
            return needed ? Optional.of(new Fault.RemainderMissing()) : Optional.empty();
        }
        return reading.remainder()
                .filter(remainder -> remainder.compareTo(left) != 0)
                .map(Fault.OtherRemainder::new);
    }

    private static Optional<Form> form(Problem problem, Reading reading) {
        boolean notAsked =
                reading.remainder().isPresent() && problem.answer().remainder().isEmpty();
        return reading.form()
                .or(() -> notAsked ? Optional.of(new Form.RemainderNotAsked()) : Optional.empty());
    }
}
