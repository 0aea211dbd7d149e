package tamabako.insight.estimate;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tamabako.insight.estimate.KnowledgeTracing.State;

/// The filter against sums over every hidden path.
class KnowledgeTracingTest {

    private static final List<String> PARTS = List.of("L0", "T", "G", "S", "F");

    @Test
    void theFilterAgreesWithTheSumOverEveryHiddenPath() {
        Table all = Table.read("bkt-filter");
        List<Double> found = new ArrayList<>();
        List<Double> expected = new ArrayList<>();
        for (String pupil : all.words("obs").stream().distinct().toList()) {
            Table table = all.where("obs", pupil);
            List<Double> parts = PARTS.stream().map(p -> table.numbers(p).getFirst()).toList();
            KnowledgeTracing tracing =
                    new KnowledgeTracing(
                            parts.get(0), parts.get(1), parts.get(2), parts.get(3), parts.get(4));
            List<Boolean> answers = table.words("y").stream().map("1"::equals).toList();

            List<State> states = tracing.after(answers);

            for (State s : states) {
                found.addAll(List.of(s.logLikelihood(), s.known(), s.knownNext(), s.rightNext()));
            }
            for (int i = 0; i < states.size(); i++) {
                int at = i;
                Stream.of(
                                "loglik",
                                "p_known_given_y1_t",
                                "p_known_after_transition",
                                "p_correct_next")
                        .map(column -> table.numbers(column).get(at))
                        .forEach(expected::add);
            }
        }

        Largest.between(found, expected).isAtMost(1e-12);
    }

    @Test
    void anAnswerThatCannotBeIsNamed() {
        KnowledgeTracing sure = new KnowledgeTracing(1, 0, 0, 0, 0);

        assertThatThrownBy(() -> sure.after(List.of(true, false)))
                .hasMessage("An answer that cannot be, number 2.");
    }
}
