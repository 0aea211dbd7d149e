package tamabako.desk.command;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import tamabako.problems.Attempt;
import tamabako.problems.Problem;

/// Answers as CSV (RFC 4180): a line of column names with `id` and `answer`, in any order, and
/// `pupil` where it is known.
final class AnswerFile {

    private final Map<String, Problem> problems = new LinkedHashMap<>();
    private final PrintWriter err;
    private int faults;

    private AnswerFile(PrintWriter err) {
        this.err = err;
    }

    /// Marks every answer against its problem, and gives the exit code.
    static int mark(CommandSpec command, String problemFile, String answerFile, MarkLine marking)
            throws IOException {
        ProblemLines read = ProblemLines.read(command, problemFile);
        AnswerFile answers = new AnswerFile(command.commandLine().getErr());
        answers.faults = read.exit();
        read.problems().forEach(problem -> answers.problems.put(problem.id(), problem));
        try (BufferedReader in = Source.open(answerFile);
                CsvReader<NamedCsvRecord> lines = CsvReader.builder().ofNamedCsvRecord(in)) {
            for (NamedCsvRecord line : lines) {
                answers.attempt(line)
                        .map(marking::of)
                        .ifPresent(command.commandLine().getOut()::println);
            }
        } catch (CsvParseException broken) {
            answers.refuse("The answers are no CSV from here on: " + broken.getMessage());
        }
        command.commandLine().getOut().flush();
        return answers.faults == 0 ? Exit.DONE : Exit.SOME_WRONG;
    }

    private Optional<Attempt> attempt(NamedCsvRecord line) {
        String where = "line " + line.getStartingLineNumber() + ": ";
        Optional<String> id = line.findField("id");
        Optional<String> answer = line.findField("answer");
        if (id.isEmpty() || answer.isEmpty()) {
            return refuse(
                    where
                            + "the columns \"id\" and \"answer\" are needed. Name them in the first"
                            + " line.");
        }
        Problem problem = problems.get(id.get().strip());
        if (problem == null) {
            return refuse(
                    where
                            + "there is no problem \""
                            + id.get()
                            + "\" among the problems. Give one of their ids.");
        }
        Attempt attempt = Attempt.of(problem, answer.get());
        return Optional.of(
                new Attempt(
                        problem,
                        answer.get(),
                        attempt.seconds(),
                        line.findField("pupil").filter(pupil -> !pupil.isBlank()),
                        attempt.at(),
                        attempt.subtotals()));
    }

    private Optional<Attempt> refuse(String message) {
        faults++;
        err.println(message);
        return Optional.empty();
    }
}
