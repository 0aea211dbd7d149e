package tamabako.frame.words;

import java.math.BigDecimal;
import java.util.Map;
import tamabako.frame.Outcome;

/// Reads an answer off the frame.
record AnswerWords(Phrases phrases) {

    /// The answer, with its remainder if there is one, or how it is read while a loan is out.
    String read(Outcome outcome) {
        String answer = Numbers.shown(outcome.answer());
        if (outcome.loan().isPresent()) {
            BigDecimal lent = BigDecimal.ONE.scaleByPowerOfTen(outcome.loan().getAsInt());
            return phrases.say(
                    "answer.loan", Map.of("answer", answer, "amount", Numbers.shown(lent)));
        }
        return outcome.remainder()
                .filter(left -> left.signum() != 0)
                .map(Numbers::shown)
                .map(left -> Map.of("answer", answer, "remainder", left))
                .map(values -> phrases.say("answer.remainder", values))
                .orElseGet(() -> phrases.say("answer.plain", Map.of("answer", answer)));
    }
}
