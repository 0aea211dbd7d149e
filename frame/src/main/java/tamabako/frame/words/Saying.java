package tamabako.frame.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tamabako.frame.Cause;
import tamabako.frame.Rod;
import tamabako.frame.Step;

/// Says steps with one way of naming rods.
record Saying(Phrases phrases, RodNames names) {

    /// A step by itself.
    String alone(Step step) {
        return switch (step.cause()) {
            case Cause.Carry _ -> body("carry", step);
            case Cause.Borrow _ -> body("borrow", step);
            default -> withLead(lead(step), main(step, step.digit() > 0 ? "add" : "take"));
        };
    }

    /// The steps of `entry` one after another.
    List<String> together(Entry entry) {
        Step main = entry.main();
        List<String> said = new ArrayList<>();
        for (Step step : entry.ahead()) {
            boolean borrows = step.digit() < 0;
            said.add(
                    step.technique().passesTen()
                            ? body(borrows ? "borrow" : "carry-over", step)
                            : calledFor(borrows ? "borrow-for" : "carry-for", step, main));
        }
        boolean rest = !said.isEmpty() && main.technique().passesTen();
        said.add(main(main, main.digit() > 0 ? (rest ? "off" : "add") : (rest ? "back" : "take")));
        for (Step step : entry.after()) {
            said.add(body("carry", step));
        }
        return said;
    }

    /// What leads into the entry that `main` is about; empty where the step says it all.
    Optional<String> lead(Step main) {
        Topic topic = Topic.of(main);
        return topic.lead().map(key -> phrases.say(key, topic.values()));
    }

    /// A sentence with what leads into it.
    String withLead(Optional<String> lead, String body) {
        return lead.map(said -> phrases.say("sentence", Map.of("lead", said, "body", body)))
                .orElse(body);
    }

    private String main(Step step, String verb) {
        Topic topic = Topic.of(step);
        Map<String, Object> values = values(step);
        values.putAll(topic.values());
        return topic.verb()
                .filter(key -> key.startsWith("set.") ? sets(step) : clears(step))
                .map(key -> phrases.say(key, values))
                .orElseGet(() -> body(verb, step));
    }

    private String calledFor(String verb, Step step, Step main) {
        Map<String, Object> values = values(step);
        values.put("need", Math.abs(main.digit()));
        values.put("below", names.of(main.rod()));
        return phrases.say(verb + "." + step.technique().word(), values);
    }

    /// How the beads of `step` move. A carry clears a rod that holds 9; on frames with more beads
    /// it may meet a rod that holds more, and is then said as any other addition.
    private String body(String verb, Step step) {
        boolean overfull = verb.startsWith("carry") && step.before().value() > 9;
        String key = (overfull ? "add" : verb) + "." + step.technique().word();
        int uppers = Math.abs(step.after().upper() - step.before().upper());
        return phrases.say(key, uppers, values(step));
    }

    private Map<String, Object> values(Step step) {
        int digit = Math.abs(step.digit());
        Map<String, Object> values = new HashMap<>();
        values.put("digit", digit);
        values.put("ten", 10 - digit);
        values.put("ones", Math.abs(step.after().lower() - step.before().lower()));
        values.put("rod", names.of(step.rod()));
        return values;
    }

    private static boolean sets(Step step) {
        return step.digit() > 0 && step.before().equals(Rod.CLEAR);
    }

    private static boolean clears(Step step) {
        return step.digit() < 0 && step.after().equals(Rod.CLEAR);
    }
}
