package tamabako.problems.setting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import tamabako.problems.Column;
import tamabako.problems.Problem;
import tamabako.problems.Product;
import tamabako.problems.Quotient;
import tamabako.problems.Root;
import tamabako.problems.grade.Grade;
import tamabako.problems.grade.Ladder;
import tamabako.problems.grade.file.Ladders;

/// Every key of a paper of every grade, worked again by the program `bc` (POSIX,
/// arbitrary-precision calculator) from what is printed.
class KeysByBcTest {

    /// More places than any key has.
    private static final int SCALE = 20;

    @Test
    void bcFindsTheSameKeys() {
        List<Problem> problems = new ArrayList<>();
        for (Ladder ladder : Ladders.shipped()) {
            for (Grade grade : ladder.grades()) {
                PaperMaker maker = PaperMaker.of(ladder.id(), grade);
                problems.addAll(SamplePapers.paper(maker, 11).problems());
            }
        }
        StringBuilder program = new StringBuilder("scale=" + SCALE + "\n");
        problems.forEach(problem -> program.append(expression(problem)).append('\n'));
        Optional<List<String>> worked = bc(program.toString());
        if (worked.isEmpty()) {
            System.err.println(
                    "SKIPPED: the program bc is missing, so no key was worked again by it."
                            + " Install the package bc.");
        }
        Assumptions.assumeTrue(worked.isPresent(), "bc is not installed");

        assertThat(problems).hasSizeGreaterThan(2_000);
        assertThat(worked.get()).hasSameSizeAs(problems);
        for (int i = 0; i < problems.size(); i++) {
            Problem problem = problems.get(i);
            assertThat(key(problem))
                    .as(expression(problem) + " = " + worked.get().get(i))
                    .isEqualByComparingTo(rounded(problem, new BigDecimal(worked.get().get(i))));
        }
    }

    private static BigDecimal key(Problem problem) {
        return problem.answer().value();
    }

    private static String expression(Problem problem) {
        return switch (problem) {
            case Column column ->
                    column.rows().stream()
                            .map(BigDecimal::toPlainString)
                            .reduce("0", (sum, row) -> sum + "+(" + row + ")");
            case Product product ->
                    product.multiplicand().toPlainString()
                            + "*"
                            + product.multiplier().toPlainString();
            case Quotient quotient ->
                    quotient.dividend().toPlainString() + "/" + quotient.divisor().toPlainString();
            case Root root ->
                    root.degree() == 2
                            ? "sqrt(" + root.of().toPlainString() + ")"
                            : "e(l(" + root.of().toPlainString() + ")/3)";
        };
    }

    /// What bc found, as the paper asks for it: half up to its places; roots are exact.
    private static BigDecimal rounded(Problem problem, BigDecimal worked) {
        Optional<String> unit = problem.terms().unit();
        int places = problem.terms().places().orElse(unit.isPresent() ? 0 : SCALE / 2);
        return problem instanceof Column ? worked : worked.setScale(places, RoundingMode.HALF_UP);
    }

    /// What bc prints, a line for each; empty where there is no bc.
    private static Optional<List<String>> bc(String program) {
        try {
            ProcessBuilder command = new ProcessBuilder("bc", "-lq");
            command.environment().put("BC_LINE_LENGTH", "0");
            Process process = command.redirectErrorStream(true).start();
            Thread writer =
                    Thread.ofVirtual()
                            .start(() -> {
                                try (var in = process.getOutputStream()) {
                                    in.write(program.getBytes(StandardCharsets.US_ASCII));
                                } catch (IOException failed) {
                                    throw new UncheckedIOException(failed);
                                }
                            });
            String printed =
                    new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            writer.join();
            return Optional.of(printed.lines().toList());
        } catch (IOException _) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }
}
